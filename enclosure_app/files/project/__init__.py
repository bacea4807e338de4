"""The project file: what is saved, how it is kept from harm, and how older ones are read."""
