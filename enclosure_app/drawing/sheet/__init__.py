"""The sheet that is issued: its section, table, legend, title block and cover."""
