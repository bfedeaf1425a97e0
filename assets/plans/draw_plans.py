"""Draws the floor plans of the example homes into examples/*/plans/.

Needs Python 3 and Pillow (`pip install pillow`), and the DejaVu fonts. Run it from anywhere:

    python3 assets/plans/draw_plans.py

Each home has a file here that describes its floors. Frames and rooms agree with `plan` and
`outline` in its home.ron: change both together.
"""

from pathlib import Path

import flat
import old_house
import two_storey

EXAMPLES = Path(__file__).resolve().parents[2] / "examples"


def main():
    two_storey.draw(EXAMPLES / "two-storey" / "plans")
    flat.draw(EXAMPLES / "flat" / "plans")
    old_house.draw(EXAMPLES / "old-house" / "plans")


if __name__ == "__main__":
    main()
