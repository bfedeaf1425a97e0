"""Taps through phone pages in headless Chromium over WebDriver (https://www.w3.org/TR/webdriver2/).

    phone.py hostile           writes a home whose texts try to break out of the page
    phone.py test PAGES SHOTS  tests PAGES/*.html, saves screenshots in SHOTS

Nothing but the standard library is needed.
"""

import base64
import json
import pathlib
import re
import socket
import subprocess
import sys
import tempfile
import time
import urllib.error
import urllib.request

WIDTH, HEIGHT = 390, 844
FLAGS = [
    "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync",
    "--hide-scrollbars", "--lang=en-US",
    # Thousands of answers are opened one after the other.
    "--disable-ipc-flooding-protection",
]
ELEMENT = "element-6066-11e4-a52e-4f735466cecf"

# Each tries another way out of where text may stand.
NASTY = "<script>alert(1)</script>"
NASTIER = "</script><img src=x onerror=alert(2)>"
QUOTES = "\\\"' onfocus='alert(3)' autofocus=\\\" & &lt; \u2028\u2029 ]]> [[script]] --><!--"

HOSTILE = f"""#![enable(implicit_some)]
Home(
    format: 1,
    name: "{NASTY} {QUOTES}",
    units: Us,
    emergency_phone: "911",
    usual_space: "kitchen",
    levels: [(id: "ground", name: "{NASTIER}", elevation_m: 0.0)],
    spaces: [
        (id: "kitchen", name: "{NASTY}", level: "ground", outline: [(0.0, 0.0), (5.0, 0.0), (5.0, 4.0), (0.0, 4.0)]),
        (id: "hall", name: "{QUOTES}", level: "ground", outline: [(5.0, 0.0), (8.0, 0.0), (8.0, 4.0), (5.0, 4.0)]),
    ],
    components: [
        (id: "street", kind: WaterMain, name: "Street {NASTIER}", owner: "utility"),
        (id: "main", kind: IsolatingValve, name: "Main {NASTIER}", tag: "<b>", space: "hall", at: (5.5, 1.0, 1.0),
            operates: (handle: Lever, closes: QuarterTurn, state: Stiff), note: "{QUOTES} {NASTIER}"),
        (id: "stop", kind: IsolatingValve, name: "{QUOTES}", tag: "'\\"", space: "kitchen", at: (2.0, 3.0, 0.4), note: "{NASTY}"),
        (id: "sink", kind: Sink, name: "Sink {NASTY}", space: "kitchen", at: (2.2, 3.2, 0.9)),
    ],
    connections: [
        (from: "street", to: "main", carries: ColdWater),
        (from: "main", to: "stop", carries: ColdWater),
        (from: "stop", to: "sink", carries: ColdWater),
    ],
    contacts: [
        (id: "utility", name: "{NASTIER}", phone: "\\"><script>alert(4)</script>", role: WaterUtility),
        (id: "plumber", name: "{QUOTES}", phone: "javascript:alert(5)", role: Plumber),
    ],
)
"""


class Browser:
    """One session with a fresh profile."""

    def __init__(self, dark=False, languages="en-US"):
        self.profile = tempfile.TemporaryDirectory()
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            port = free.getsockname()[1]
        self.base = f"http://127.0.0.1:{port}"
        self.driver = subprocess.Popen(
            ["chromedriver", f"--port={port}", "--silent"], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        for _ in range(100):
            try:
                if self.ask("GET", "/status")["ready"]:
                    break
            except (urllib.error.URLError, ConnectionError):
                time.sleep(0.1)
        flags = FLAGS + [f"--user-data-dir={self.profile.name}", f"--window-size={WIDTH},{HEIGHT}"]
        if dark:
            flags.append("--blink-settings=preferredColorScheme=0")
        options = {
            "args": flags,
            "prefs": {"intl.accept_languages": languages},
            "mobileEmulation": {"deviceMetrics": {"width": WIDTH, "height": HEIGHT, "pixelRatio": 2.0, "touch": True}},
        }
        capabilities = {
            "browserName": "chrome",
            "goog:chromeOptions": options,
            "goog:loggingPrefs": {"browser": "ALL", "performance": "ALL"},
        }
        session = self.ask("POST", "/session", {"capabilities": {"alwaysMatch": capabilities}})
        self.session = "/session/" + session["sessionId"]
        self.do("POST", "/timeouts", {"script": 300_000})
        if dark:
            self.cdp("Emulation.setEmulatedMedia", {"features": [{"name": "prefers-color-scheme", "value": "dark"}]})

    def ask(self, method, path, body=None):
        data = None if body is None else json.dumps(body).encode()
        request = urllib.request.Request(self.base + path, data, {"Content-Type": "application/json"}, method=method)
        try:
            with urllib.request.urlopen(request, timeout=320) as reply:
                return json.load(reply)["value"]
        except urllib.error.HTTPError as error:
            raise AssertionError(error.read().decode()[:600]) from None

    def do(self, method, path, body=None):
        return self.ask(method, self.session + path, body)

    def cdp(self, command, parameters):
        return self.do("POST", "/goog/cdp/execute", {"cmd": command, "params": parameters})

    def open(self, page, at=""):
        self.do("POST", "/url", {"url": "about:blank"})
        self.do("POST", "/url", {"url": page.resolve().as_uri() + at})

    def run(self, script, *arguments):
        return self.do("POST", "/execute/sync", {"script": script, "args": list(arguments)})

    def close(self):
        try:
            self.do("DELETE", "")
        finally:
            self.driver.terminate()
            self.driver.wait()
            self.profile.cleanup()

    # What a person does and sees

    def visible(self, selector):
        found = self.do("POST", "/elements", {"using": "css selector", "value": selector})
        return [e[ELEMENT] for e in found if self.do("GET", f"/element/{e[ELEMENT]}/displayed")]

    def text(self, selector="#app"):
        return "\n".join(self.do("GET", f"/element/{e}/text") for e in self.visible(selector))

    def heading(self):
        return self.text("#app h1")

    def tap(self, words, within="#app main"):
        """Taps the first button, link or summary that is seen and says these words."""
        element = self.run(
            """const [within, words] = arguments;
            const seen = e => e.getClientRects().length > 0;
            const all = [...document.querySelectorAll(within + ' button, ' + within + ' summary')].filter(seen);
            return all.find(e => e.textContent.trim() === words) || all.find(e => e.textContent.includes(words)) || null;""",
            within, words)
        assert element, f"no button says {words!r} on: {self.text()[:600]}"
        # A finger scrolls first to what the bar at the foot covers.
        self.run("arguments[0].scrollIntoView({block: 'center'})", element)
        self.do("POST", f"/element/{element[ELEMENT]}/click", {})
        time.sleep(0.05)

    def can_tap(self, words):
        return self.run(
            """return [...document.querySelectorAll('#app main button')].some(e => e.textContent.trim() === arguments[0]);""", words)

    def shot(self, path, whole=False):
        if whole:
            size = self.cdp("Page.getLayoutMetrics", {})["cssContentSize"]
            clip = {"x": 0, "y": 0, "width": WIDTH, "height": min(size["height"], 5000), "scale": 1}
            picture = self.cdp("Page.captureScreenshot", {"captureBeyondViewport": True, "clip": clip})["data"]
        else:
            picture = self.do("GET", "/screenshot")
        path.write_bytes(base64.b64decode(picture))

    def print(self, path):
        path.write_bytes(base64.b64decode(self.do("POST", "/print", {"background": False})))


def must_be_well(browser, page):
    """No complaint in the console, and nothing was asked of any network."""
    complaints = [e["message"] for e in browser.do("POST", "/se/log", {"type": "browser"})]
    assert not complaints, complaints
    for entry in browser.do("POST", "/se/log", {"type": "performance"}):
        message = json.loads(entry["message"])["message"]
        if message["method"] != "Network.requestWillBeSent":
            continue
        url = message["params"]["request"]["url"]
        # The browser's own empty page, before ours is opened.
        if message["params"].get("documentURL", "").startswith("chrome://"):
            continue
        own = url.split("#")[0] == page.resolve().as_uri()
        assert own or url.startswith(("data:", "about:")), f"the page asked for {url[:200]}"
    must_fit(browser)


def must_fit(browser):
    """Nothing sticks out sideways, no target is too small, no text is cut off."""
    wide = browser.run("return [document.documentElement.scrollWidth, window.innerWidth]")
    assert wide[0] <= wide[1], f"the page is {wide[0]} wide on {wide[1]}: {browser.heading()}"
    small = browser.run(
        """return [...document.querySelectorAll('#app button, #app summary, #app a, #app input')]
        .map(e => [e.textContent, e.getBoundingClientRect()]).filter(([, r]) => r.width > 0 && (r.width < 48 || r.height < 48))
        .map(([t, r]) => t + ' ' + r.width + 'x' + r.height)""")
    assert not small, f"too small for a finger: {small}"
    cut = browser.run(
        """return [...document.querySelectorAll('#app button, #app p, #app b, #app span')]
        .filter(e => e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0 && getComputedStyle(e).display !== 'inline')
        .map(e => e.textContent.slice(0, 80))""")
    assert not cut, f"cut off: {cut}"


def focus_is_on_a_heading(browser):
    assert browser.run("return /^H[12]$/.test(document.activeElement.tagName)"), \
        browser.run("return document.activeElement.outerHTML.slice(0, 200)")


REFUSALS = ["It won’t turn", "It won’t switch off", "It won’t stay on", "It won’t open"]


def to_the_last_step(browser, refuse=0):
    """Presses on until every step is done, refusing the first few that can be; returns the steps told."""
    told = []
    for _ in range(40):
        focus_is_on_a_heading(browser)
        text = browser.text("#app section.step h2")
        told.append(text.split("\n")[0])
        if "Every step is done." in text or "knows no other way" in text:
            return told
        must_fit(browser)
        refusal = next((r for r in REFUSALS if refuse and browser.can_tap(r)), None)
        if refusal:
            refuse -= 1
            before = browser.text("#app section.step h2")
            browser.tap(refusal)
            assert "Left out" in browser.text() or "knows no other way" in browser.text(), browser.text()[:500]
            assert browser.text("#app section.step h2") != before
        else:
            browser.tap("Done" if browser.can_tap("Done") else "Next")
    raise AssertionError(f"no end: {told}")


def walk(browser, page, shots):
    """Four troubles from the first tap to the last step."""
    browser.open(page)
    assert browser.heading() == "What is wrong?", browser.text()[:300]
    browser.shot(shots / "start.png")
    browser.shot(shots / "start-whole.png", whole=True)
    must_be_well(browser, page)

    # 1. A leak, by room; the first two devices refuse.
    browser.tap("Water is leaking")
    assert browser.heading() == "Where is it?"
    focus_is_on_a_heading(browser)
    browser.shot(shots / "where.png")
    must_be_well(browser, page)
    browser.tap("Kitchen")
    browser.shot(shots / "room.png")
    must_be_well(browser, page)
    browser.tap("Kitchen sink")
    assert browser.heading() == "Water is leaking"
    assert "DANGER" in browser.text() and "Cold stop under the kitchen sink" in browser.text()
    danger = browser.run("return document.querySelector('#app .danger').getBoundingClientRect().top")
    step = browser.run("return document.querySelector('#app section.step').getBoundingClientRect().top")
    assert danger < step < HEIGHT, (danger, step)
    browser.shot(shots / "leak.png")
    browser.shot(shots / "leak-whole.png", whole=True)
    browser.print(shots / "leak.pdf")
    must_be_well(browser, page)
    browser.tap("Show the whole floor")
    browser.tap("Show it closer")
    browser.tap("It won’t turn")
    assert "Left out" in browser.text()
    browser.shot(shots / "leak-refused.png")
    told = to_the_last_step(browser, refuse=1)
    assert len(told) > 4, told
    browser.shot(shots / "leak-done.png", whole=True)
    must_be_well(browser, page)
    # The phone's own way back takes back one press.
    browser.do("POST", "/back", {})
    time.sleep(0.1)
    assert "Every step is done." not in browser.text("#app section.step")

    # 2. Sewage, found by typing.
    browser.tap("Start again")
    browser.tap("Sewage is rising")
    field = browser.visible("#app input")[0]
    browser.do("POST", f"/element/{field}/value", {"text": "laundry drain"})
    browser.shot(shots / "search.png")
    row = browser.text("#app .rows button").split("\n")
    browser.tap(next(r for r in row if "drain" in r.lower()))
    assert browser.heading() == "Sewage is rising"
    browser.shot(shots / "sewage.png", whole=True)
    to_the_last_step(browser, refuse=1)
    must_be_well(browser, page)

    # 3. A dead outlet, with a check that shows something.
    browser.tap("Start again")
    browser.tap("An outlet is dead")
    browser.tap("Family bath")
    if browser.heading().endswith("what is it?"):
        browser.tap("Family bath", within="#app main .rows")
    browser.shot(shots / "outlet.png", whole=True)
    before = browser.text()
    seen = browser.run("""return [...document.querySelectorAll('#app section.step .presses')].pop().querySelectorAll('button').length""")
    assert seen >= 2, before
    browser.run("[...document.querySelectorAll('#app section.step .presses')].pop().querySelector('button').click()")
    time.sleep(0.1)
    assert browser.text() != before
    to_the_last_step(browser)
    must_be_well(browser, page)

    # 4. Sparks where nobody knows the place; every switch refuses.
    browser.tap("Start again")
    browser.tap("Sparks, burning smell, hot outlet")
    browser.tap("I do not know where")
    to_the_last_step(browser, refuse=9)
    must_be_well(browser, page)

    # Gas, CO, fire and wires: one press from any page, no place asked for.
    for words, title in [("Gas", "It smells of gas"), ("CO", "The carbon monoxide alarm sounds"),
                         ("Fire", "Smoke or fire"), ("Wires", "Wires are down")]:
        browser.open(page, "#en/leak/3/d")
        browser.tap(words, within="#app .leave")
        assert browser.heading() == title, browser.heading()
        text = browser.text()
        assert "911" in text and "DANGER" in text
        focus_is_on_a_heading(browser)
    browser.shot(shots / "wires.png")
    must_be_well(browser, page)
    dial = browser.run("return document.querySelector('#app .leave a').href")
    assert dial == "tel:911", dial

    # Spanish and back.
    browser.open(page, "#en/leak/3")
    english = browser.text("#app section.step h2")
    browser.tap("Español")
    assert browser.run("return document.documentElement.lang") == "es"
    assert browser.heading() == "Hay una fuga de agua" or "agua" in browser.heading().lower(), browser.heading()
    assert browser.text("#app section.step h2") != english
    assert browser.can_tap("Listo"), browser.text()
    browser.shot(shots / "spanish.png")
    must_be_well(browser, page)
    browser.tap("English")
    assert browser.text("#app section.step h2") == english

    # An address that nobody made leads to the first page, not into nothing.
    for at in ["#en/leak/99999/d", "#xx/yy/zz", "#en/leak/3/dddddddddddddddddddd", "#%", "#en/leak/@-1", "#en/leak/3/hhhxxx9"]:
        browser.open(page, at)
        assert browser.heading(), at
        must_be_well(browser, page)


def large_text(browser, page, shots):
    """The phone's owner has set the text to 200 %."""
    browser.open(page)
    for name, at in [("start", ""), ("where", "#en/leak"), ("leak", "#en/leak/3"), ("fire", "#en/fire/0"), ("spanish", "#es/sparks/2")]:
        browser.open(page, at)
        # As the setting does: the size that rem stands for.
        browser.run("document.querySelector('html').attributeStyleMap.set('font-size', CSS.px(32))")
        time.sleep(0.1)
        browser.shot(shots / f"large-{name}.png")
        must_fit(browser)


def every_answer(browser, page):
    """Opens every trouble at every spot, and presses each refusal, without a complaint."""
    browser.open(page)
    counted = browser.run(
        """const D = JSON.parse(document.getElementById('data').textContent);
        return D.troubles.map(t => [t[0], t[6].length])""")
    total = 0
    for language in ["en", "es"]:
        for trouble, spots in counted:
            missing = browser.run(
                """const [language, trouble, spots, presses] = arguments;
                const bad = [];
                for (let n = 0; n < spots; n++) {
                    // Every spot in every language; every press at every third.
                    for (const events of n % 3 ? [''] : presses) {
                        const wanted = `#${language}/${trouble}/${n}/${events}`;
                        history.replaceState(null, '', wanted);
                        window.dispatchEvent(new Event('hashchange'));
                        const app = document.getElementById('app');
                        if (app.hidden || /undefined|NaN|\\{\\w+\\}/.test(app.textContent) || !app.querySelector('h1'))
                            bad.push(wanted);
                    }
                }
                return bad;""", language, trouble, spots, ["", "x", "h", "0", "dx"] if language == "en" else ["", "x"])
            assert not missing, missing[:5]
            total += spots
    must_be_well(browser, page)
    return total


def hostile(browser, page, shots):
    """Text that tries to become something else stays text."""
    for at in ["", "#en/leak", "#en/leak/@0", "#en/leak/0", "#en/leak/1", "#es/leak/2", "#en/no-water/0", "#en/gas-smell/0"]:
        browser.open(page, at)
        text = browser.text()
        assert "<script>alert(1)</script>" in text or "</script><img" in text, (at, text[:500])
        strays = browser.run(
            """return [...document.querySelectorAll('script, img, [onerror], [onfocus], [autofocus], a')]
            .filter(e => !(e.tagName === 'SCRIPT' && (e.id === 'data' || e === document.scripts[document.scripts.length - 1]))
                && !(e.tagName === 'A' && /^tel:[0-9+]+$/.test(e.getAttribute('href')))).map(e => e.outerHTML.slice(0, 200))""")
        assert not strays, strays
        must_be_well(browser, page)
    browser.shot(shots / "hostile.png")
    # Nor without scripts.
    browser.cdp("Emulation.setScriptExecutionDisabled", {"value": True})
    browser.open(page)
    browser.shot(shots / "hostile-plain.png")
    browser.cdp("Emulation.setScriptExecutionDisabled", {"value": False})


def without_scripts(browser, page, shots):
    """The preview of many phones runs no script: the numbers and the first acts are there."""
    browser.cdp("Emulation.setScriptExecutionDisabled", {"value": True})
    browser.open(page)
    browser.shot(shots / "plain.png", whole=True)
    text = browser.text("#plain")
    for words in ["911", "It smells of gas", "House main shutoff", "Huele a gas"]:
        assert words in text, f"{words!r} is missing without scripts: {text[:400]}"
    browser.cdp("Emulation.setScriptExecutionDisabled", {"value": False})


def other_language(page):
    """A phone that speaks Spanish begins in Spanish."""
    browser = Browser(languages="es-MX,es")
    try:
        browser.open(page)
        assert browser.run("return document.documentElement.lang") == "es"
        must_be_well(browser, page)
    finally:
        browser.close()


def test(pages, shots):
    shots.mkdir(parents=True, exist_ok=True)
    house = pages / "two-storey.html"
    size = house.stat().st_size
    assert size < 2_000_000, f"{size} bytes"
    browser = Browser()
    try:
        walk(browser, house, shots)
        browser.open(house)
        browser.print(shots / "start.pdf")
        large_text(browser, house, shots)
        without_scripts(browser, house, shots)
        total = sum(every_answer(browser, pages / f"{home}.html") for home in ["two-storey", "flat", "old-house", "hostile"])
        hostile(browser, pages / "hostile.html", shots)
    finally:
        browser.close()
    dark = Browser(dark=True)
    try:
        for name, at in [("start", ""), ("where", "#en/leak"), ("leak", "#en/leak/3"), ("fire", "#en/fire/0")]:
            dark.open(house, at)
            dark.shot(shots / f"dark-{name}.png", whole=name == "leak")
            must_be_well(dark, house)
    finally:
        dark.close()
    other_language(house)
    print(f"phone pages: four troubles to the last step, {total} answers opened in two languages, "
          f"{size // 1000} kB, nothing asked of any network; screenshots in {shots}")


if __name__ == "__main__":
    if sys.argv[1:] == ["hostile"]:
        print(HOSTILE, end="")
    elif len(sys.argv) == 4 and sys.argv[1] == "test":
        test(pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3]))
    else:
        sys.exit(__doc__)
