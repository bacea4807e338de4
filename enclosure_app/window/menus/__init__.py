"""Every action in one table, and where it is offered: menus, the bar of tools, a right click, keys."""
