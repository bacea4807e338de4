"""Names by which what was found is known outside: the same finding always has the same one."""

from uuid import NAMESPACE_URL, UUID, uuid5

from enclosure_app.model.finding import Finding

_OURS = uuid5(NAMESPACE_URL, "urn:enclosure-continuity-check")


def guid(*parts: str) -> UUID:
    """Return the name of what `parts` name (RFC 9562, version 5: made of a name, not by chance)."""
    return uuid5(_OURS, "\x1f".join(parts).encode("utf-8", "replace").decode("utf-8"))


def finding_guid(key: str, section: str, scope: str) -> UUID:
    """Return the name of a finding, which its key and its section make within a scope.

    The scope is the `id` of the project, which one drawing alone makes too: two buildings have a
    "Section 1" each, and their drawings may number lines alike.
    """
    return guid("finding", scope, key, section)


def urn(finding: Finding, section: str, scope: str) -> str:
    """Return the name of a finding as an address that leads nowhere (RFC 9562, "urn:uuid:")."""
    return f"urn:uuid:{finding_guid(finding.key, section, scope)}"
