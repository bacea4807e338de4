"""Whether a process of this computer still runs."""

import os
from pathlib import Path


def runs(pid: int, began: str = "") -> bool:
    """Return whether process `pid` runs, and is the one that began then (see `started`).

    Where that cannot be found out, it is taken to run.
    """
    if pid <= 0:
        return False
    if os.name == "nt":  # there, signal 0 would end the process instead of asking
        return True
    try:
        os.kill(pid, 0)
    except (ProcessLookupError, OverflowError):
        return False
    except PermissionError:
        pass  # somebody else's, and there
    now = started(pid)
    return not (began and now) or began == now


def started(pid: int) -> str:
    """Return when a process began, in the system's own count, "" where it does not tell.

    A pid is given again to another process, soon after a restart of the computer; the two differ
    in this. Source: proc(5), field 22 of ``/proc/PID/stat``, and the boot id of the kernel.
    """
    try:
        stat = Path(f"/proc/{pid}/stat").read_text(encoding="ascii", errors="replace")
        boot = Path("/proc/sys/kernel/random/boot_id").read_text(encoding="ascii").strip()
    except OSError:
        return ""
    return f"{boot} {stat.rpartition(')')[2].split()[19]}"
