"""Pictures and pages under the drawing: put there, brought to scale, shown or hidden."""
