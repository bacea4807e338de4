"""Lets the tests of this folder write ``from random_layers import ...``."""

import importlib.util
import sys
from pathlib import Path

if "random_layers" not in sys.modules:
    spec = importlib.util.spec_from_file_location(
        "random_layers", Path(__file__).with_name("random_layers.py")
    )
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["random_layers"] = module
    spec.loader.exec_module(module)

if "sections" not in sys.modules:
    spec = importlib.util.spec_from_file_location(
        "sections", Path(__file__).with_name("sections.py")
    )
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["sections"] = module
    spec.loader.exec_module(module)
