"""From the lines of a drawing to its sections: frames, titles, marks, breaks and chains."""
