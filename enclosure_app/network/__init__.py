"""What the rules question.

Words of this package, beyond those of the model:

fabric      the pieces of one control, the frame and the break strips as one table of numbers
rim         a connected boundary polyline of a piece's solid (geometry)
link        a place where two rims meet at no lift: they touch, or they lap
jump        a straight way between two rims that do not meet; its lift is its length
parity      whether a way has crossed the straight way between the marks an odd number of times
cluster     rims joined by links
"""
