"""The pen that draws a floor plan: walls, doors, windows, stairs, fixtures, figures.

All places are in metres on the level, x to the east and y to the south, as in a home file.
Everything is drawn twice as large and then made smaller, so that lines come out smooth.
"""

import math

from PIL import Image, ImageDraw, ImageFont

WALL, LINE, FAINT, PALE, PAPER = 70, 60, 150, 225, 255
# A scale bar's field in metres and in the unit, how many fields, the unit.
FEET_BAR = ((1.524, 5), 3, "ft")
METRE_BAR = ((1.0, 1), 4, "m")
OVER = 2  # how much larger the picture is while it is drawn


def feet(metres):
    """Feet and inches, as American plans write them: 12'-6"."""
    inches = round(metres / 0.0254)
    return f"{inches // 12}'-{inches % 12}\""


def metric(metres):
    """Metres with two decimals, as metric plans write them."""
    return f"{metres:.2f}"


class Plan:
    """One floor, from its left top corner (metres) and its size (metres)."""

    def __init__(self, left, top, width, height, pixels=1800, figures=feet):
        self.left, self.top, self.figures = left, top, figures
        self.scale = pixels / width * OVER
        self.image = Image.new("L", (pixels * OVER, round(height * self.scale)), PAPER)
        self.pen = ImageDraw.Draw(self.image)
        self.bottom, self.right = top + height, left + width

    # -- from metres to the picture -------------------------------------------------------

    def p(self, x, y):
        return ((x - self.left) * self.scale, (y - self.top) * self.scale)

    def line(self, *points, shade=LINE, width=2):
        self.pen.line([self.p(*q) for q in points], fill=shade, width=width * OVER // 2 * 2, joint="curve")

    def rect(self, x1, y1, x2, y2, fill=None, shade=LINE, width=2):
        x1, x2, y1, y2 = min(x1, x2), max(x1, x2), min(y1, y2), max(y1, y2)
        self.pen.rectangle([self.p(x1, y1), self.p(x2, y2)], fill=fill, outline=shade,
                           width=width * OVER // 2 * 2 if shade is not None else 0)

    def rounded(self, x1, y1, x2, y2, radius=0.1, fill=PAPER, shade=LINE):
        self.pen.rounded_rectangle([self.p(x1, y1), self.p(x2, y2)], radius * self.scale,
                                   fill=fill, outline=shade, width=2 * OVER // 2 * 2)

    def circle(self, x, y, r, fill=None, shade=LINE):
        self.oval(x, y, r, r, fill, shade)

    def oval(self, x, y, rx, ry, fill=None, shade=LINE):
        self.pen.ellipse([self.p(x - rx, y - ry), self.p(x + rx, y + ry)], fill=fill,
                         outline=shade, width=2 * OVER // 2 * 2)

    def dashed(self, x1, y1, x2, y2, shade=FAINT, dash=0.18, gap=0.12):
        length = math.hypot(x2 - x1, y2 - y1)
        ux, uy, at = (x2 - x1) / length, (y2 - y1) / length, 0.0
        while at < length:
            end = min(at + dash, length)
            self.line((x1 + ux * at, y1 + uy * at), (x1 + ux * end, y1 + uy * end), shade=shade)
            at = end + gap

    def text(self, x, y, words, size=22, shade=LINE, bold=False, turn=0, anchor="mm"):
        """Text with its middle at a place; `size` in pixels of the finished picture."""
        face = "DejaVuSans-Bold.ttf" if bold else "DejaVuSans.ttf"
        font = ImageFont.truetype(face, size * OVER)
        if turn == 0:
            self.pen.multiline_text(self.p(x, y), words, font=font, fill=shade, anchor=anchor,
                                    align="center", spacing=4 * OVER)
            return
        box = font.getbbox(words, anchor="mm")
        side = max(box[2] - box[0], box[3] - box[1]) + 8 * OVER
        tile = Image.new("L", (side, side), 0)
        ImageDraw.Draw(tile).text((side / 2, side / 2), words, font=font, fill=255, anchor="mm")
        tile = tile.rotate(turn, resample=Image.Resampling.BICUBIC)
        px, py = self.p(x, y)
        self.image.paste(shade, (round(px - side / 2), round(py - side / 2)), tile)

    # -- the building ---------------------------------------------------------------------

    def walls(self, *outlines):
        """The building as one solid; rooms are then cut out of it."""
        for outline in outlines:
            self.pen.polygon([self.p(*q) for q in outline], fill=WALL)

    def room(self, name, x1, y1, x2, y2, label=None, figures=True, size=22):
        self.rect(x1, y1, x2, y2, fill=PAPER, shade=None)
        if name:
            self.name(name, x1, y1, x2, y2, label, figures, size)

    def name(self, name, x1, y1, x2, y2, label=None, figures=True, size=22):
        x, y = label or ((x1 + x2) / 2, (y1 + y2) / 2)
        lines = name.count("\n") + 1
        self.text(x, y, name.upper(), size=size, bold=True)
        if figures:
            words = f"{self.figures(x2 - x1)} × {self.figures(y2 - y1)}"
            drop = (lines * size * 0.62 + 14) * OVER / self.scale
            self.text(x, y + drop, words, size=max(size - 6, 13), shade=100)

    def gap(self, x1, y1, x2, y2):
        """A hole through a wall."""
        self.rect(x1, y1, x2, y2, fill=PAPER, shade=None)

    def opening(self, x1, y1, x2, y2):
        """A wide passage without a door: the head is drawn dashed."""
        self.gap(x1, y1, x2, y2)
        if x2 - x1 > y2 - y1:
            self.dashed(x1, y1, x2, y1)
            self.dashed(x1, y2, x2, y2)
        else:
            self.dashed(x1, y1, x1, y2)
            self.dashed(x2, y1, x2, y2)

    def door(self, x, y, along, swing, width=0.8, thick=0.2):
        """A door hinged at x, y (middle of the wall), closing towards `along`, opening to `swing`.

        Both are one of N, E, S, W.
        """
        ax, ay = DIRECTION[along]
        sx, sy = DIRECTION[swing]
        half = thick / 2 + 0.01
        far = (x + ax * width, y + ay * width)
        self.gap(*corners(x - abs(sx) * half, y - abs(sy) * half,
                          far[0] + abs(sx) * half, far[1] + abs(sy) * half))
        for jx, jy in ((x, y), far):
            self.line((jx - abs(sx) * half, jy - abs(sy) * half), (jx + abs(sx) * half, jy + abs(sy) * half))
        hx, hy = x + sx * thick / 2, y + sy * thick / 2
        self.line((hx, hy), (hx + sx * width, hy + sy * width), width=4)
        start = math.degrees(math.atan2(ay, ax))
        end = math.degrees(math.atan2(sy, sx))
        if (end - start) % 360 > 180:
            start, end = end, start
        a, b = self.p(hx - width, hy - width)
        c, d = self.p(hx + width, hy + width)
        self.pen.arc([a, b, c, d], start, end, fill=FAINT, width=2 * OVER // 2 * 2)

    def window(self, x1, y1, x2, y2):
        """A window: the wall's rectangle between two jambs."""
        self.rect(x1, y1, x2, y2, fill=PAPER, shade=WALL)
        if x2 - x1 > y2 - y1:
            middle = (y1 + y2) / 2
            self.line((x1, middle), (x2, middle))
        else:
            middle = (x1 + x2) / 2
            self.line((middle, y1), (middle, y2))

    def up_and_over(self, x1, y1, x2, y2, depth):
        """A garage door, with the place that it takes when open."""
        self.gap(x1, y1, x2, y2)
        self.rect(x1, (y1 + y2) / 2 - 0.03, x2, (y1 + y2) / 2 + 0.03, fill=PALE)
        for a, b, c, d in ((x1, y1, x1, y1 - depth), (x2, y1, x2, y1 - depth), (x1, y1 - depth, x2, y1 - depth)):
            self.dashed(a, b, c, d)

    def stairs(self, x1, y1, x2, y2, steps, towards, word):
        """Stairs in a rectangle, walked `towards` N, E, S or W in the sense of `word` (UP or DN)."""
        self.rect(x1, y1, x2, y2, fill=PAPER)
        for i in range(1, steps):
            if towards in "NS":
                y = y1 + (y2 - y1) * i / steps
                self.line((x1, y), (x2, y), shade=FAINT)
            else:
                x = x1 + (x2 - x1) * i / steps
                self.line((x, y1), (x, y2), shade=FAINT)
        ax, ay = DIRECTION[towards]
        mx, my = (x1 + x2) / 2, (y1 + y2) / 2
        reach = ((x2 - x1) if ax else (y2 - y1)) / 2 - 0.28
        room = 26 * OVER / self.scale  # the word stands where the arrow begins
        tail = (mx - ax * (reach - room), my - ay * (reach - room))
        tip = (mx + ax * reach, my + ay * reach)
        self.line(tail, tip, shade=LINE)
        self.arrow_head(*tip, math.atan2(ay, ax))
        wx, wy = mx - ax * (reach - room * 0.1), my - ay * (reach - room * 0.1)
        half = 18 * OVER / self.scale
        self.rect(wx - half, wy - half * 0.62, wx + half, wy + half * 0.62, fill=PAPER, shade=None)
        self.text(wx, wy, word, size=17, bold=True)

    def arrow_head(self, x, y, angle, size=0.14):
        points = [(x, y)]
        for turn in (2.7, -2.7):
            points.append((x + size * math.cos(angle + turn), y + size * math.sin(angle + turn)))
        self.pen.polygon([self.p(*q) for q in points], fill=LINE)

    def break_line(self, x1, y1, x2, y2):
        """The slanting double line where the plan cuts stairs off."""
        for step in (-0.05, 0.05):
            self.line((x1, y1 + step), (x2, y2 + step), width=3)

    # -- figures --------------------------------------------------------------------------

    def dimension(self, x1, y1, x2, y2, size=18):
        """A dimension line with its figure, ticks at both ends."""
        self.line((x1, y1), (x2, y2), shade=110)
        tick = 0.1
        for x, y in ((x1, y1), (x2, y2)):
            self.line((x - tick, y + tick), (x + tick, y - tick), width=3)
            if y1 == y2:
                self.line((x, y - 0.16), (x, y + 0.16), shade=110)
            else:
                self.line((x - 0.16, y), (x + 0.16, y), shade=110)
        words = self.figures(math.hypot(x2 - x1, y2 - y1))
        away = (size * 0.75) * OVER / self.scale
        if y1 == y2:
            self.text((x1 + x2) / 2, y1 - away, words, size=size)
        else:
            self.text(x1 - away, (y1 + y2) / 2, words, size=size, turn=90)

    def dimensions(self, along, places, at):
        """A chain of dimensions at x (along "y") or y (along "x")."""
        for a, b in zip(places, places[1:]):
            if along == "x":
                self.dimension(a, at, b, at)
            else:
                self.dimension(at, a, at, b)

    def north(self, x, y, r=0.42):
        self.circle(x, y, r)
        self.pen.polygon([self.p(x, y - r), self.p(x - r * 0.4, y + r * 0.6), self.p(x, y + r * 0.3)], fill=LINE)
        self.pen.polygon([self.p(x, y - r), self.p(x + r * 0.4, y + r * 0.6), self.p(x, y + r * 0.3)],
                         fill=PAPER, outline=LINE)
        self.text(x, y - r - 16 * OVER / self.scale, "N", size=20, bold=True)

    def scale_bar(self, x, y, step, steps, unit):
        """A scale bar of `steps` fields; `step` is (metres, number)."""
        metres, number = step
        for i in range(steps):
            self.rect(x + i * metres, y, x + (i + 1) * metres, y + 0.1, fill=LINE if i % 2 == 0 else PAPER)
        for i in range(steps + 1):
            words = f"{number * i}" + (f" {unit}" if i == steps else "")
            self.text(x + i * metres, y - 13 * OVER / self.scale, words, size=15)

    def title(self, x, y, name, under):
        self.text(x, y, name.upper(), size=30, bold=True, anchor="lm")
        self.text(x, y + 32 * OVER / self.scale, under, size=17, shade=100, anchor="lm")

    # -- fixtures and furniture -----------------------------------------------------------

    def toilet(self, x, y, facing):
        """A toilet; x, y is the middle of its tank's back."""
        dx, dy = DIRECTION[facing]
        if dx:
            self.rounded(*corners(x, y - 0.22, x + dx * 0.2, y + 0.22), 0.04)
            self.oval(x + dx * 0.44, y, 0.25, 0.18, PAPER)
        else:
            self.rounded(*corners(x - 0.22, y, x + 0.22, y + dy * 0.2), 0.04)
            self.oval(x, y + dy * 0.44, 0.18, 0.25, PAPER)

    def basin(self, x1, y1, x2, y2):
        """A vanity with an oval bowl."""
        self.rect(x1, y1, x2, y2, fill=PAPER)
        mx, my = (x1 + x2) / 2, (y1 + y2) / 2
        r = min(x2 - x1, y2 - y1) / 2 - 0.07
        self.oval(mx, my, r * (1.25 if x2 - x1 > y2 - y1 else 1), r * (1.25 if y2 - y1 > x2 - x1 else 1), PAPER)
        self.circle(mx, my, 0.025)

    def sink(self, x1, y1, x2, y2, bowls=2):
        self.rounded(x1, y1, x2, y2, 0.04)
        step = (x2 - x1) / bowls
        for i in range(bowls):
            self.rounded(x1 + step * i + 0.05, y1 + 0.06, x1 + step * (i + 1) - 0.05, y2 - 0.06, 0.05)
            self.circle(x1 + step * (i + 0.5), (y1 + y2) / 2, 0.03)

    def tub(self, x1, y1, x2, y2):
        self.rect(x1, y1, x2, y2, fill=PAPER)
        self.rounded(x1 + 0.08, y1 + 0.08, x2 - 0.08, y2 - 0.08, 0.22)
        end = ((x1 + x2) / 2, y2 - 0.25) if y2 - y1 > x2 - x1 else (x1 + 0.25, (y1 + y2) / 2)
        self.circle(*end, 0.035)

    def shower(self, x1, y1, x2, y2):
        self.rect(x1, y1, x2, y2, fill=PAPER)
        self.line((x1, y1), (x2, y2), shade=FAINT)
        self.line((x1, y2), (x2, y1), shade=FAINT)
        self.circle((x1 + x2) / 2, (y1 + y2) / 2, 0.06, PAPER)

    def stove(self, x1, y1, x2, y2):
        self.rect(x1, y1, x2, y2, fill=PAPER)
        for fx in (0.28, 0.72):
            for fy in (0.28, 0.72):
                self.circle(x1 + (x2 - x1) * fx, y1 + (y2 - y1) * fy, min(x2 - x1, y2 - y1) * 0.15)

    def box(self, x1, y1, x2, y2, words="", size=14, cross=False):
        """A cupboard, an appliance or a machine."""
        self.rect(x1, y1, x2, y2, fill=PAPER)
        if cross:
            self.line((x1, y1), (x2, y2), shade=FAINT)
            self.line((x1, y2), (x2, y1), shade=FAINT)
        if words:
            self.text((x1 + x2) / 2, (y1 + y2) / 2, words, size=size)

    def counter(self, *points):
        self.pen.polygon([self.p(*q) for q in points], fill=PAPER)
        self.line(*points, points[0])

    def drum(self, x, y, r, words="", size=14):
        """A tank seen from above."""
        self.circle(x, y, r, PAPER)
        if words:
            self.text(x, y, words, size=size)

    def machine(self, x1, y1, x2, y2, words):
        """A washing machine or a dryer."""
        self.rect(x1, y1, x2, y2, fill=PAPER)
        self.circle((x1 + x2) / 2, (y1 + y2) / 2, min(x2 - x1, y2 - y1) * 0.36)
        self.text((x1 + x2) / 2, (y1 + y2) / 2, words, size=14)

    def floor_drain(self, x, y):
        self.rect(x - 0.13, y - 0.13, x + 0.13, y + 0.13, fill=PAPER)
        self.circle(x, y, 0.08)
        self.circle(x, y, 0.03, LINE)

    def bed(self, x1, y1, x2, y2, head):
        self.rounded(x1, y1, x2, y2, 0.05)
        wide = (x2 - x1) if head in "NS" else (y2 - y1)
        pillows = 2 if wide > 1.2 else 1
        for i in range(pillows):
            a, b = 0.1 + i * wide / pillows, (i + 1) * wide / pillows - 0.1
            if head == "N":
                self.rounded(x1 + a, y1 + 0.08, x1 + b, y1 + 0.45, 0.06)
            elif head == "S":
                self.rounded(x1 + a, y2 - 0.45, x1 + b, y2 - 0.08, 0.06)
            elif head == "W":
                self.rounded(x1 + 0.08, y1 + a, x1 + 0.45, y1 + b, 0.06)
            else:
                self.rounded(x2 - 0.45, y1 + a, x2 - 0.08, y1 + b, 0.06)
        fold = {"N": ((x1, y1 + 0.6), (x2, y1 + 0.6)), "S": ((x1, y2 - 0.6), (x2, y2 - 0.6)),
                "W": ((x1 + 0.6, y1), (x1 + 0.6, y2)), "E": ((x2 - 0.6, y1), (x2 - 0.6, y2))}[head]
        self.line(*fold)

    def sofa(self, x1, y1, x2, y2, back):
        self.rounded(x1, y1, x2, y2, 0.1)
        inner = {"W": (x1 + 0.22, y1 + 0.15, x2, y2 - 0.15), "E": (x1, y1 + 0.15, x2 - 0.22, y2 - 0.15),
                 "N": (x1 + 0.15, y1 + 0.22, x2 - 0.15, y2), "S": (x1 + 0.15, y1, x2 - 0.15, y2 - 0.22)}[back]
        self.rounded(*inner, 0.06)

    def table(self, x1, y1, x2, y2, chairs=2):
        step = (y2 - y1) / chairs
        for i in range(chairs):
            y = y1 + step * (i + 0.5)
            for x in (x1 - 0.18, x2 + 0.18):
                self.rounded(x - 0.2, y - 0.2, x + 0.2, y + 0.2, 0.08)
        self.rounded(x1, y1, x2, y2, 0.05)

    def car(self, x1, y1, x2, y2):
        for a, b, c, d in ((x1, y1, x2, y1), (x1, y2, x2, y2), (x1, y1, x1, y2), (x2, y1, x2, y2)):
            self.dashed(a, b, c, d)
        self.dashed(x1, y1 + 1.2, x2, y1 + 1.2)

    def tree(self, x, y, r=0.8):
        self.circle(x, y, r, shade=FAINT)
        for i in range(8):
            a = i * math.pi / 4
            self.line((x + r * 0.25 * math.cos(a), y + r * 0.25 * math.sin(a)),
                      (x + r * 0.85 * math.cos(a), y + r * 0.85 * math.sin(a)), shade=200)

    # -- out ------------------------------------------------------------------------------

    def save(self, path):
        """Sixteen greys are enough for lines, and keep the file small."""
        edge = round(0.08 * self.scale)
        self.pen.rectangle([0, 0, self.image.width - 1, self.image.height - 1], outline=PAPER, width=edge)
        self.rect(self.left + 0.08, self.top + 0.08, self.right - 0.08, self.bottom - 0.08, shade=FAINT)
        small = self.image.resize((self.image.width // OVER, self.image.height // OVER), Image.Resampling.LANCZOS)
        small = small.point([round(grey / 17) * 17 for grey in range(256)])
        path.parent.mkdir(parents=True, exist_ok=True)
        small.quantize(16, dither=Image.Dither.NONE).save(path, optimize=True)


DIRECTION = {"N": (0, -1), "E": (1, 0), "S": (0, 1), "W": (-1, 0)}


def corners(x1, y1, x2, y2):
    return min(x1, x2), min(y1, y2), max(x1, x2), max(y1, y2)
