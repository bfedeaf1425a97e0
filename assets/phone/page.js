
/* Shows what was answered beforehand. It works nothing out, fetches nothing and keeps nothing: where
   one is stands in the address behind the #, so that the phone's own way back works:
   #en/leak/12/dx0  language / trouble / spot (or @room) / what was pressed:
   d step done, x step's device refused, h what was done did not help, 0..9 what a check showed.
   Text from the home's file only ever becomes text, by textContent. */
(function () {
  "use strict";
  var D = JSON.parse(document.getElementById("data").textContent);
  var app = document.getElementById("app");
  var plain = document.getElementById("plain");
  var says = document.getElementById("says");
  var root = document.documentElement;
  var SVG = "http://www.w3.org/2000/svg";
  var SIGNALS = ["danger", "warning", "caution", "notice"];
  var GROUPS = ["life", "water", "drains", "power", "cooling", "control"];
  var REFUSALS = ["", "wont-turn", "wont-switch-off", "wont-stay-on", "wont-open"];
  var at = 0;
  var current = -1;
  var whole = false;
  var last = null;

  /* Words */
  function word(n) { return n < 0 ? "" : D.words[at][n]; }
  function ui(key, fills) {
    var text = word(D.ui[key]);
    for (var name in fills || {}) text = text.split("{" + name + "}").join(fills[name]);
    return text;
  }

  /* Elements */
  function el(tag, cls, kids) {
    var node = document.createElement(tag);
    if (cls) node.className = cls;
    add(node, kids);
    return node;
  }
  function add(node, kids) {
    if (kids === null || kids === undefined || kids === false) return node;
    if (Array.isArray(kids)) kids.forEach(function (kid) { add(node, kid); });
    else node.appendChild(kids.nodeType ? kids : document.createTextNode(String(kids)));
    return node;
  }
  function svg(tag, attributes, kids) {
    var node = document.createElementNS(SVG, tag);
    for (var name in attributes) node.setAttribute(name, attributes[name]);
    return add(node, kids);
  }
  /* A name from the home's file, in the home's language. */
  function own(text, tag) {
    var node = el(tag || "span", "", text);
    if (D.own) node.lang = D.own;
    node.dir = "auto";
    return node;
  }
  function sign(id) {
    return svg("svg", { "class": "sign", "aria-hidden": "true", viewBox: "0 0 100 100" },
      svg("use", { href: "#sign-" + id }));
  }
  function press(cls, kids, act) {
    var node = el("button", cls, kids);
    node.type = "button";
    node.addEventListener("click", act);
    return node;
  }
  function fold(title, kids, open) {
    var node = el("details", "", [el("summary", "", title), el("div", "apart", kids)]);
    node.open = !!open;
    return node;
  }

  /* Where one is */
  function read() {
    var parts = [];
    try { parts = decodeURIComponent(location.hash.slice(1)).split("/"); } catch (e) { parts = []; }
    var where = { lang: -1, trouble: -1, room: null, spot: -1, events: "" };
    D.langs.forEach(function (l, n) { if (l[0] === parts[0]) where.lang = n; });
    D.troubles.forEach(function (t, n) { if (t[0] === parts[1]) where.trouble = n; });
    if (where.trouble < 0) return where;
    var spots = D.troubles[where.trouble][6];
    if (/^@-?\d+$/.test(parts[2] || "")) where.room = parseInt(parts[2].slice(1), 10);
    else if (/^\d+$/.test(parts[2] || "") && spots[+parts[2]]) where.spot = +parts[2];
    if (where.spot >= 0 && /^[dxh\d]*$/.test(parts[3] || "")) where.events = parts[3] || "";
    return where;
  }
  function hash(trouble, spot, events) {
    var path = "#" + D.langs[at][0];
    if (trouble >= 0) path += "/" + D.troubles[trouble][0];
    if (spot !== null && spot !== undefined) path += "/" + spot;
    if (events) path += "/" + events;
    return path;
  }
  function go(trouble, spot, events) { location.hash = hash(trouble, spot, events); }
  function firstLanguage() {
    var wanted = (navigator.languages || [navigator.language || ""]).concat([D.own || ""]);
    for (var i = 0; i < wanted.length; i++) {
      for (var n = 0; n < D.langs.length; n++) {
        if (String(wanted[i]).toLowerCase().split(/[-_]/)[0] === D.langs[n][0]) return n;
      }
    }
    return 0;
  }

  /* Rooms and spots */
  function roomOf(spot) {
    if (spot[0] === 0) return D.parts[spot[1]][3];
    return spot[0] === 1 ? spot[1] : -1;
  }
  function spotName(spot) {
    if (spot[0] === 0) return D.parts[spot[1]][0];
    if (spot[0] === 1) return ui("anywhere", { space: D.spaces[spot[1]][0] });
    return ui("not-listed");
  }
  function homeSpot(trouble) {
    var spots = D.troubles[trouble][6];
    for (var n = 0; n < spots.length; n++) if (spots[n][0] === 2) return n;
    return -1;
  }
  function roomName(room) { return room < 0 ? ui("room-unknown") : D.spaces[room][0]; }
  function placeOf(part) {
    var room = D.parts[part][3];
    if (room < 0) return ui("room-unknown");
    var level = D.spaces[room][1];
    if (level < 0) return D.spaces[room][0];
    return ui("whereabouts", { space: D.spaces[room][0], level: D.levels[level][0] });
  }
  /* What is in several systems is shown as part of the one that the trouble is in. */
  function systemOf(part) {
    var wanted = current < 0 ? -1 : D.troubles[current][4];
    return wanted >= 0 && D.parts[part][6] & (1 << wanted) ? wanted : D.parts[part][2];
  }

  /* What was pressed so far: the node one is at, and its first step that is not done. */
  function follow(where) {
    var spot = D.troubles[where.trouble][6][where.spot];
    function tell(n) { s.told[n] = true; }
    var s = { node: spot[2], done: {}, failed: [], told: {}, lost: false, step: -1, answer: null };
    for (var i = 0; ; i++) {
      var node = D.nodes[s.node];
      s.answer = D.answers[node[0]];
      s.steps = D.lists[s.answer[2]];
      s.step = -1;
      for (var k = 0; k < s.steps.length; k++) {
        if (!s.done[s.steps[k]]) { s.step = k; break; }
      }
      if (i >= where.events.length || s.lost) return s;
      /* What was told before a press need not stand in the way again after it. */
      D.lists[s.answer[1]].forEach(tell);
      var event = where.events[i];
      if (event === "d" && s.step >= 0) {
        s.done[s.steps[s.step]] = true;
      } else if (event === "x" && s.step >= 0) {
        s.failed.push(D.steps[s.steps[s.step]][2]);
        var next = refusedTo(node, s.step);
        if (next < 0) s.lost = true; else s.node = next;
      } else if (event === "h") {
        s.steps.slice(0, s.step + 1).forEach(function (n) {
          var step = D.steps[n];
          if (step[2] >= 0 && (step[4] === 1 || step[4] === 2)) s.failed.push(step[2]);
        });
        if (node[2] < 0) s.lost = true; else s.node = node[2];
      } else if (/\d/.test(event)) {
        var shown = D.lists[node[3]];
        if (shown[2 * event + 1] !== undefined) { s.node = shown[2 * event + 1]; s.done = {}; }
      }
    }
  }
  function refusedTo(node, step) {
    var list = D.lists[node[1]];
    for (var n = 0; n < list.length; n += 2) if (list[n] === step) return list[n + 1];
    return -1;
  }

  /* Pieces of pages */
  function heading(text) {
    var h = el("h1", "", text);
    h.tabIndex = -1;
    return h;
  }
  function top(where, back) {
    var other = (at + 1) % D.langs.length;
    var language = press("quiet", D.langs[other][1], function () {
      at = other;
      location.replace(hash(where.trouble, where.room !== null ? "@" + where.room : where.spot >= 0 ? where.spot : null, where.events));
    });
    language.lang = D.langs[other][0];
    return el("nav", "top screen", [
      back ? press("quiet back", ui("back"), back) : el("span"),
      el("span", "", [
        where.trouble >= 0 ? press("quiet", ui("start-again"), function () { go(-1); }) : null,
        language])
    ]);
  }
  function caution(row) {
    return el("p", "signal " + SIGNALS[row[0]], [
      el("strong", "", [row[0] < 3 ? sign("alert") : null, ui("signal-" + SIGNALS[row[0]])]),
      el("span", "", word(row[1]))]);
  }
  function number(name, phone, tel, why) {
    var text = el("span", "", [phone ? el("b", "", phone) : null, el("span", "", name),
      why ? el("span", "soft", why) : null, phone ? null : el("span", "soft", ui("no-number"))]);
    if (!tel) return el("b", "number", text);
    var link = el("a", "number", [sign("phone"), text]);
    link.href = tel;
    return link;
  }
  function numbers(list) {
    var needed = [], besides = [];
    list.forEach(function (n) {
      var c = D.calls[n];
      var row = el("li", "", number(word(c[0]), word(c[1]), word(c[2]), c[4] ? "" : word(c[3])));
      (c[4] ? besides : needed).push(row);
    });
    return [el("ul", "bare calls", needed),
      besides.length ? fold(ui("call-besides"), el("ul", "bare calls", besides)) : null];
  }
  function readOut() {
    return el("div", "where-i-am", [el("p", "soft", ui("read-out")), el("p", "address", own(D.address))]);
  }
  function plate(part) {
    var tag = D.parts[part][1], system = systemOf(part);
    return svg("svg", { "class": "pin", "aria-hidden": "true", viewBox: "-50 -50 100 100" },
      [shape(system, 0, 0, tag ? 40 : 22), svg("text", { "class": "t" + system, "font-size": tag.length > 3 ? 22 : 30 }, tag)]);
  }
  /* Round for water, square for drains, a diamond for power, a hexagon for gas, an upright oblong for
     cooling, a triangle for control. */
  function shape(system, x, y, r) {
    var cls = "mark p" + system;
    if (system === 0) return svg("circle", { "class": cls, cx: x, cy: y, r: r });
    var corners = [null,
      [-.9, -.9, .9, -.9, .9, .9, -.9, .9], [0, -1.2, 1.2, 0, 0, 1.2, -1.2, 0],
      [-.6, -.95, .6, -.95, 1.15, 0, .6, .95, -.6, .95, -1.15, 0],
      [-.8, -1.1, .8, -1.1, .8, 1.1, -.8, 1.1], [-1.2, -.9, 1.2, -.9, 0, 1.2]][system];
    var points = corners.map(function (c, n) { return Math.round((n % 2 ? y : x) + c * r); });
    return svg("polygon", { "class": cls, points: points.join(" ") });
  }
  function thing(part) {
    return el("div", "thing", [plate(part), el("span", "", [own(D.parts[part][0], "b"), own(placeOf(part))])]);
  }

  /* The plan around a device */
  function bounds(points) {
    var b = [Infinity, Infinity, -Infinity, -Infinity];
    for (var n = 0; n < points.length; n += 2) {
      b = [Math.min(b[0], points[n]), Math.min(b[1], points[n + 1]), Math.max(b[2], points[n]), Math.max(b[3], points[n + 1])];
    }
    return b;
  }
  function levelBox(level) {
    if (D.levels[level][2].length) {
      var p = D.levels[level][2];
      return [p[0], p[1], p[0] + p[2], p[1] + p[3]];
    }
    var all = [];
    D.spaces.forEach(function (s) { if (s[1] === level) all = all.concat(s[2]); });
    if (!all.length) return null;
    var b = bounds(all);
    return [b[0] - 50, b[1] - 50, b[2] + 50, b[3] + 50];
  }
  function view(level, room, x, y, wholeFloor) {
    var box = levelBox(level);
    if (!box) return null;
    if (wholeFloor) return [box[0], box[1], box[2] - box[0], box[3] - box[1]];
    var b = room >= 0 && D.spaces[room][2].length ? bounds(D.spaces[room][2].concat([x, y])) : [x, y, x, y];
    var side = 900;
    if (b[2] - b[0] > side) { b[0] = x - side / 2; b[2] = x + side / 2; }
    if (b[3] - b[1] > side) { b[1] = y - side / 2; b[3] = y + side / 2; }
    var w = Math.max(b[2] - b[0] + 160, 600), h = Math.max(b[3] - b[1] + 160, 420);
    if (w < h * 4 / 3) w = h * 4 / 3; else h = w * 3 / 4;
    var cx = (b[0] + b[2]) / 2, cy = (b[1] + b[3]) / 2;
    /* Rather all paper than a piece of nothing. */
    w = Math.min(w, box[2] - box[0]); h = Math.min(h, box[3] - box[1]);
    cx = Math.max(box[0] + w / 2, Math.min(box[2] - w / 2, cx));
    cy = Math.max(box[1] + h / 2, Math.min(box[3] - h / 2, cy));
    return [cx - w / 2, cy - h / 2, w, h].map(Math.round);
  }
  /* Where north is: an arrow with its letter before its head, in an upper corner away from the device. */
  function north(box, x, y, r) {
    var inset = r * 1.5, top = box[1] + inset;
    var corners = [box[0] + box[2] - inset, box[0] + inset].filter(function (cx) { return Math.abs(x - cx) > r * 3.2 || y - top > r * 3.2; });
    if (D.north === null || !corners.length) return null;
    var turn = D.north * Math.PI / 180, cx = Math.round(corners[0]), cy = Math.round(top);
    var points = [0, -.2, .3, .28, -.3, .28].map(function (c) { return Math.round(c * r); });
    return svg("g", { "class": "north" }, [
      svg("circle", { cx: cx, cy: cy, r: Math.round(r * 1.15) }),
      svg("g", { transform: "translate(" + cx + " " + cy + ") rotate(" + D.north + ")" }, [
        svg("line", { x1: 0, y1: Math.round(r * .9), x2: 0, y2: Math.round(r * .2), "stroke-width": Math.max(1, Math.round(r * .13)) }),
        svg("polygon", { points: points.join(" ") })]),
      svg("text", { x: Math.round(cx + Math.sin(turn) * r * .65), y: Math.round(cy - Math.cos(turn) * r * .65), "font-size": Math.round(r * .7) }, ui("north-letter"))]);
  }
  function plan(part, wholeFloor) {
    var p = D.parts[part], room = p[3];
    if (!p[4].length || room < 0 || D.spaces[room][1] < 0) return null;
    var level = D.spaces[room][1], l = D.levels[level], x = p[4][0], y = p[4][1];
    var box = view(level, room, x, y, wholeFloor);
    if (!box) return null;
    var map = svg("svg", { "class": "plan", role: "img", viewBox: box.join(" "),
      "aria-label": ui(D.north === null ? "plan-of" : "plan-of-north", { level: l[0], device: p[0], degrees: D.north }) });
    if (l[1]) {
      var image = { "class": "dim", href: l[1], x: l[2][0], y: l[2][1], width: l[2][2], height: l[2][3], preserveAspectRatio: "none" };
      if (l[3]) image.transform = "translate(" + (2 * l[2][0] + l[2][2]) + " 0) scale(-1 1)";
      map.appendChild(svg("image", image));
    } else {
      D.spaces.forEach(function (s) {
        if (s[1] !== level || !s[2].length) return;
        var b = bounds(s[2]), size = Math.min(box[2] / 22, (b[2] - b[0]) / Math.max(4, s[0].length) * 1.6);
        map.appendChild(svg("polygon", { "class": "room", points: s[2].join(" ") }));
        map.appendChild(svg("text", { "class": "name", x: (b[0] + b[2]) / 2, y: (b[1] + b[3]) / 2, "font-size": Math.round(size) }, s[0]));
      });
    }
    if (D.spaces[room][2].length) map.appendChild(svg("polygon", { "class": "here", points: D.spaces[room][2].join(" ") }));
    var r = Math.max(box[2], box[3]) / 22, system = systemOf(part), mark = north(box, x, y, r);
    if (mark) map.appendChild(mark);
    map.appendChild(svg("circle", { "class": "halo", cx: x, cy: y, r: Math.round(r * 1.75) }));
    map.appendChild(shape(system, x, y, r));
    map.appendChild(svg("text", { "class": "tag t" + system, x: x, y: y, "font-size": Math.round(r * (p[1].length > 3 ? .6 : .8)) }, p[1]));
    return map;
  }
  function map(part) {
    var first = plan(part, whole);
    if (!first) return null;
    var box = el("div", "map", first);
    var toggle = press("quiet", ui(whole ? "closer" : "whole-floor"), function () {
      whole = !whole;
      box.replaceChild(plan(part, whole), box.firstChild);
      toggle.textContent = ui(whole ? "closer" : "whole-floor");
    });
    box.appendChild(toggle);
    return box;
  }

  /* Pages */
  function start(where) {
    var groups = GROUPS.map(function (key, group) {
      var members = D.troubles.map(function (t, n) { return [t, n]; })
        .filter(function (m) { return m[0][3] === group; })
        .sort(function (a, b) { return b[0][5] - a[0][5] || a[1] - b[1]; });
      return [el("h2", "", ui("group-" + key)), el("div", group === 0 ? "rows grid" : "rows", members.map(function (m) {
        var t = m[0];
        return press("row", [
          el("span", "end " + (group === 0 ? "life" : t[4] < 0 ? "" : "s" + t[4]), sign(t[0])),
          el("span", "", [el("b", "", word(t[1])), group === 0 ? null : el("span", "soft", word(t[2]))])
        ], function () { open(m[1]); });
      }))];
    });
    return [top(where), heading(ui("what")), el("p", "soft lead", ui("what-hint")), groups,
      el("h2", "", ui("call")), readOut(),
      el("ul", "bare calls", D.contacts.map(function (c) {
        return el("li", "", number(c[0] || ui("emergency-name"), c[1], c[2], c[3]));
      })),
      D.emergency ? null : el("p", "soft", ui("emergency-missing")),
      el("p", "soft last", ui("made-on"))];
  }
  function open(trouble) {
    var spots = D.troubles[trouble][6];
    if (spots.length === 1) go(trouble, 0); else go(trouble);
  }
  function rooms(trouble) {
    var found = {}, order = [];
    D.troubles[trouble][6].forEach(function (spot, n) {
      if (spot[0] === 2) return;
      var room = roomOf(spot);
      if (!found[room]) { found[room] = []; order.push(room); }
      found[room].push(n);
    });
    function level(room) { return room < 0 ? -1 : D.spaces[room][1]; }
    var levels = [];
    order.forEach(function (room) { if (levels.indexOf(level(room)) < 0) levels.push(level(room)); });
    levels.sort(function (a, b) {
      return (b === D.usual) - (a === D.usual) || (a < 0) - (b < 0) || a - b;
    });
    return levels.map(function (l) {
      return [l, order.filter(function (room) { return level(room) === l; }).map(function (room) { return [room, found[room]]; })];
    });
  }
  function spotRow(where, n) {
    var spot = D.troubles[where.trouble][6][n], part = spot[0] === 0 ? spot[1] : -1;
    return press("row", [
      part >= 0 ? plate(part) : el("span", "end", sign("room")),
      el("span", "", own(spotName(spot), "b"))], function () { go(where.trouble, n); });
  }
  function notListed(where) {
    var home = homeSpot(where.trouble);
    return home < 0 ? null : press("row", [el("span", "end", "?"), el("span", "", el("b", "", ui("not-listed")))],
      function () { go(where.trouble, home); });
  }
  function asked(where) { return D.troubles[where.trouble]; }
  function whereIs(where) {
    var t = asked(where), all = t[6], list = el("div"), found = el("div", "rows");
    rooms(where.trouble).forEach(function (level) {
      if (level[0] >= 0) list.appendChild(own(D.levels[level[0]][0], "h2"));
      list.appendChild(el("div", "rows grid", level[1].map(function (room) {
        var only = room[1].length === 1;
        var name = only && all[room[1][0]][0] === 0 ? own(spotName(all[room[1][0]])) : null;
        if (name) name.className = "soft";
        return press("row", el("span", "", [own(roomName(room[0]), "b"), name]),
          function () { if (only) go(where.trouble, room[1][0]); else go(where.trouble, "@" + room[0]); });
      })));
    });
    var input = el("input");
    input.type = "search";
    input.autocomplete = "off";
    input.addEventListener("input", function () {
      var wanted = bare(input.value).split(" ").filter(Boolean);
      list.hidden = wanted.length > 0;
      found.textContent = "";
      if (!wanted.length) return;
      all.forEach(function (spot, n) {
        if (spot[0] === 2) return;
        var room = roomOf(spot), text = bare(spotName(spot) + " " + (spot[0] === 0 ? D.parts[spot[1]][1] : "") + " " + (room < 0 ? "" : D.spaces[room][0]));
        if (wanted.every(function (w) { return text.indexOf(w) >= 0; })) add(found, spotRow(where, n));
      });
      var none = !found.childNodes.length;
      if (none) add(found, el("p", "", ui("none-found", { words: input.value })));
      says.textContent = none ? ui("none-found", { words: input.value }) : "";
    });
    var many = all.length > 12;
    return [top(where, back), el("p", "soft", word(t[1])), heading(ui("where")),
      many ? el("label", "field", [el("span", "soft", ui("search")), input])
        : el("p", "soft", ui(all.length > 1 ? "where-hint" : "no-spots")),
      el("h2", "away", ui("where")), found, list, el("h2", "", ui("not-sure")), el("div", "rows", notListed(where))];
  }
  function bare(text) {
    text = text.toLowerCase();
    if (text.normalize) text = text.normalize("NFD").replace(/[\u0300-\u036f]/g, "");
    return text.replace(/[^a-z0-9\u00c0-\uffff]+/g, " ");
  }
  function inRoom(where) {
    var all = asked(where)[6], here = [], seen = [], hidden = [];
    all.forEach(function (spot, n) {
      if (spot[0] === 2 || roomOf(spot) !== where.room) return;
      (spot[0] === 1 ? here : spot[3] ? seen : hidden).push(spotRow(where, n));
    });
    return [top(where, back), el("p", "soft", word(asked(where)[1])),
      heading(ui("in-room", { space: roomName(where.room) })),
      el("div", "rows", here.concat(seen)),
      hidden.length ? el("h2", "", ui(here.length + seen.length ? "hidden" : "things")) : null,
      el("div", "rows", hidden), el("h2", "", ui("not-sure")), el("div", "rows", notListed(where))];
  }
  function back() { history.back(); }

  function sentences(text) {
    var end = text.indexOf(". ");
    return end < 0 ? [text, ""] : [text.slice(0, end + 1), text.slice(end + 2)];
  }
  function answer(where) {
    var t = asked(where), spot = t[6][where.spot], s = follow(where), a = s.answer, node = D.nodes[s.node];
    var list = D.lists[a[1]], cautions = list.map(function (n) { return D.cautions[n]; });
    function fresh(c, n) { return !s.told[list[n]]; }
    var told = cautions.filter(function (c, n) { return !fresh(c, n); });
    var grave = cautions.filter(fresh).filter(function (c) { return c[0] < 2; });
    var mild = cautions.filter(fresh).filter(function (c) { return c[0] > 1; });
    var leave = t[5] === 1, begun = where.events.length > 0, isDone = s.step < 0;
    var title = heading(word(t[1]));
    var page = [top(where, back), title];
    if (spot[0] !== 2) page.push(own(spotLine(spot), "p"));
    else if (!leave) page.push(el("p", "soft", ui("not-listed")));
    /* What can kill stands before the act; once told, it is folded up above the next. */
    page.push(el("div", "screen", [told.length ? fold(ui("more-cautions"), told.map(caution)) : null, grave.map(caution)]));
    if (!a[0] && !leave) page.push(el("p", "soft screen", ui("not-mapped")));
    s.failed.forEach(function (part, n) {
      if (part >= 0 && s.failed.indexOf(part) === n) page.push(el("p", "soft screen", ui("left-out", { device: D.parts[part][0] })));
    });
    var focus = title;
    if (s.lost) {
      focus = el("h2", "", ui("no-further"));
      page.push(el("section", "step screen", [focus, el("p", "", ui("no-further-hint")), numbers(D.lists[a[3]])]));
    } else if (leave) {
      page.push(el("section", "step screen", el("ol", "told", s.steps.map(function (n) { return el("li", "", word(D.steps[n][0])); }))));
    } else if (isDone) {
      focus = el("h2", "", ui("all-done"));
      page.push(el("section", "step screen", focus));
    } else {
      var card = stepCard(where, s, node);
      page.push(card);
      if (begun) focus = card.querySelector("h2");
    }
    page.push(el("div", "screen", rest(where, s, node, { leave: leave, begun: begun, mild: mild, done: isDone })));
    page.push(sheet(s, cautions));
    return { page: page, focus: focus, says: isDone || leave ? "" : ui("step-of", { n: s.step + 1, of: s.steps.length }) };
  }
  function spotLine(spot) {
    var room = roomOf(spot);
    return spot[0] === 0 && room >= 0 ? ui("whereabouts", { space: D.parts[spot[1]][0], level: D.spaces[room][0] }) : spotName(spot);
  }
  function stepCard(where, s, node) {
    var step = D.steps[s.steps[s.step]], part = step[2], text = sentences(word(step[0]));
    function event(e) { return function () { go(where.trouble, where.spot, where.events + e); }; }
    var h = el("h2", "", text[0]);
    h.tabIndex = -1;
    var presses = [press("press first", ui(step[4] > 0 && step[4] < 5 ? "done" : "next"), event("d"))];
    if (part >= 0 && step[4] > 0 && step[4] < 5) {
      presses.push(press("press", ui(REFUSALS[step[4]]), event("x")));
      presses.push(press("press", ui("cannot-reach"), event("x")));
      if (step[1] >= 0 && node[2] >= 0) presses.push(press("press", ui("no-help"), event("h")));
    }
    return el("section", "step screen", [
      el("p", "of", ui("step-of", { n: s.step + 1, of: s.steps.length })), h,
      text[1] ? el("p", "", text[1]) : null,
      step[3] >= 0 ? el("p", "soft", word(step[3])) : null,
      step[1] >= 0 ? el("p", "prove", ui("prove", { prove: word(step[1]) })) : null,
      el("div", "presses", presses),
      step[4] === 5 ? numbers(D.lists[s.answer[3]].filter(function (n) { return !D.calls[n][4]; })) : null,
      part >= 0 ? thing(part) : null,
      part >= 0 && D.parts[part][5] >= 0 ? el("p", "note", word(D.parts[part][5])) : null,
      part >= 0 ? map(part) : null]);
  }
  function rest(where, s, node, is) {
    var a = s.answer, list = [];
    if (is.mild.length) list.push(is.mild.filter(function (c) { return c[0] < 3; }).map(caution));
    if (a[7] >= 0) {
      var check = D.checks[a[7]], shown = D.lists[node[3]], presses = [];
      for (var n = 0; n < shown.length; n += 2) presses.push(see(where, word(shown[n]), n / 2));
      list.push(el("h2", "", ui("check")), el("section", "step check", [el("p", "prove", word(check[1])), el("p", "soft", word(check[2])),
        check[0] >= 0 ? thing(check[0]) : null, el("div", "presses", presses), check[0] >= 0 ? map(check[0]) : null]));
    }
    var off = D.lists[a[9]].map(word);
    if (off.length) list.push(fold(ui("goes-off"), off.map(function (w, n) { return el("p", n === 0 && off.length > 1 ? "prove" : "", w); })));
    if (!is.leave && s.steps.length > 1) list.push(fold(ui("all-steps"), steps(s)));
    list.push(el("h2", "", ui("call")), readOut(), numbers(D.lists[a[3]]));
    var relief = D.lists[a[8]].map(word);
    if (relief.length) list.push(fold(ui("relief"), relief.map(function (w) { return el("p", "", w); })));
    var suspects = D.lists[a[6]], told = [];
    for (var k = 0; k < suspects.length; k += 2) {
      if (suspects[k] >= 0) told.push(el("li", "", [own(D.parts[suspects[k]][0], "b"), " ", el("span", "soft", word(suspects[k + 1]))]));
    }
    if (told.length) list.push(fold(ui("suspects"), el("ol", "told", told)));
    var ways = D.lists[a[5]].map(function (n) {
      var way = D.sets[n];
      return el("div", "apart", [D.lists[way[0]].filter(function (p) { return p >= 0; }).map(thing), el("p", "", word(way[1])),
        [2, 4, 3].map(function (k) { return way[k] >= 0 ? el("p", "soft", word(way[k])) : null; })]);
    });
    if (ways.length) list.push(fold(ui("other-ways"), ways));
    var restore = D.lists[a[4]];
    if (restore.length) list.push(fold(ui("restore"), el("ol", "told", restore.map(function (n) { return el("li", "", word(n)); })), is.done || is.leave));
    list.push(is.mild.filter(function (c) { return c[0] === 3; }).map(function (c) { return el("p", "soft last", word(c[1])); }));
    return list;
  }
  function see(where, text, n) {
    return press("press", text, function () { go(where.trouble, where.spot, where.events + n); });
  }
  function steps(s) {
    return el("ol", "told", s.steps.map(function (n, k) {
      var li = el("li", s.done[n] ? "past" : k === s.step ? "now" : "", word(D.steps[n][0]));
      if (k === s.step) li.setAttribute("aria-current", "step");
      return li;
    }));
  }
  /* The whole answer at once, for paper. */
  function sheet(s, cautions) {
    var drawn = [];
    return el("div", "sheet", [cautions.map(caution), el("ol", "told", s.steps.map(function (n) {
      var step = D.steps[n], part = step[2], map = null;
      if (part >= 0 && drawn.indexOf(part) < 0 && step[4] > 0 && drawn.length < 3) { map = plan(part, false); drawn.push(part); }
      return el("li", "", [word(step[0]), step[1] >= 0 ? el("p", "prove", ui("prove", { prove: word(step[1]) })) : null, map]);
    })), el("h2", "", ui("call")), readOut(), numbers(D.lists[s.answer[3]]),
      el("h2", "", ui("restore")), el("ol", "told", D.lists[s.answer[4]].map(function (n) { return el("li", "", word(n)); }))]);
  }
  function leaveBar(where) {
    var list = D.troubles.map(function (t, n) { return [t, n]; }).filter(function (m) { return m[0][5]; }).map(function (m) {
      var b = press("", [sign(m[0][0]), el("span", "", ui("short-" + m[0][0]))], function () { go(m[1], 0); });
      b.setAttribute("aria-label", word(m[0][1]));
      return el("li", "", b);
    });
    if (D.emergency && D.emergency[1]) {
      var link = el("a", "dial", [sign("phone"), el("span", "", D.emergency[0])]);
      link.href = D.emergency[1];
      link.setAttribute("aria-label", ui("emergency", { phone: D.emergency[0] }));
      list.push(el("li", "", link));
    }
    var nav = el("nav", "leave screen", el("ul", "bare", list));
    nav.setAttribute("aria-label", ui("leave-first"));
    return nav;
  }

  function render() {
    var where = read();
    at = where.lang < 0 ? at : where.lang;
    current = where.trouble;
    var page, focus = null, told = "";
    if (where.trouble < 0) page = start(where);
    else if (where.spot >= 0) { var shown = answer(where); page = shown.page; focus = shown.focus; told = shown.says; }
    else if (where.room !== null) page = inRoom(where);
    else page = whereIs(where);
    root.lang = D.langs[at][0];
    root.className = "live" + (where.trouble < 0 ? " first" : "");
    Array.prototype.forEach.call(plain.children, function (part) {
      part.className = "plain" + (part.lang === D.langs[at][0] ? " this" : "");
    });
    app.textContent = "";
    add(app, [el("main", "", page), leaveBar(where)]);
    app.hidden = false;
    plain.hidden = true;
    document.title = (where.trouble < 0 ? "" : word(asked(where)[1]) + " \u2013 ") + ui("title");
    focus = focus || app.querySelector("h1");
    focus.tabIndex = -1;
    if (last !== null) {
      window.scrollTo(0, 0);
      focus.focus({ preventScroll: true });
      says.textContent = told;
    }
    last = location.hash;
  }

  /* If anything goes wrong here, what needs no script is shown. */
  function show() {
    try { render(); } catch (error) {
      app.hidden = true;
      plain.hidden = false;
      root.className = "";
      console.error(error);
    }
  }
  at = firstLanguage();
  show();
  window.addEventListener("hashchange", show);
})();
