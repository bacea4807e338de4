"""What a sample is expected to say: verdicts, faults with their places, told as TOML."""

from dataclasses import dataclass, field

from drawn.shapes import Point

CONTROLS = ("water", "air", "vapour", "heat")


@dataclass(frozen=True)
class Fault:
    """One fault put into a drawing; `at_mm` in the drawing's own coordinates times its unit."""

    rule: str
    control: str
    at_mm: Point
    section: str
    told: str
    within_mm: float


@dataclass
class SectionExpected:
    """One frame of a drawing: its title, its corners in mm, and the verdict of each control."""

    title: str
    frame_mm: tuple[float, float, float, float]
    verdicts: dict[str, str] = field(default_factory=lambda: dict.fromkeys(CONTROLS, "continuous"))


@dataclass
class Expected:
    """Everything that is expected of one drawing."""

    file: str
    layer_map: str
    units: str
    unit_mm: float
    version: str
    title: str
    binary: bool = False
    sections: list[SectionExpected] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)

    def verdicts(self) -> dict[str, str]:
        """Return the worst verdict of each control over all sections."""
        rank = ("continuous", "absent", "broken")
        return {
            control: max((s.verdicts[control] for s in self.sections), key=rank.index)
            for control in CONTROLS
        }

    def as_toml(self) -> str:
        """Return the tables of this drawing."""
        lines = ["[[drawing]]", f'file = "{self.file}"', f'layers = "{self.layer_map}"']
        lines += [
            f'units = "{self.units}"',
            f"units_in_file = {str(self.version != 'R12').lower()}",
        ]
        lines += [f"verdicts = {_table(self.verdicts())}"]
        for section in self.sections:
            corners = ", ".join(_number(c) for c in section.frame_mm)
            lines += ["", "[[drawing.section]]", f'title = "{section.title}"']
            lines += [f"frame_mm = [{corners}]", f"verdicts = {_table(section.verdicts)}"]
        for fault in self.faults:
            lines += ["", "[[drawing.finding]]", *_finding(fault)]
        return "\n".join(lines) + "\n"


def _finding(fault: Fault) -> list[str]:
    x, y = fault.at_mm
    return [
        f'rule = "{fault.rule}"',
        f'control = "{fault.control}"',
        f"at_mm = [{_number(x)}, {_number(y)}]",
        f"within_mm = {_number(fault.within_mm)}",
        f'section = "{fault.section}"',
    ]


def _table(verdicts: dict[str, str]) -> str:
    return "{ " + ", ".join(f'{k} = "{v}"' for k, v in verdicts.items()) + " }"


def _number(value: float) -> str:
    return f"{round(value, 1) + 0.0:.1f}"
