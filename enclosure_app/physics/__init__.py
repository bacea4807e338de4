"""What happens inside the wall: layers along a cut, vapour and heat. Empty until drying is added."""
