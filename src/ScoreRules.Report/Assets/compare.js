const partsOf = row => new Map(all(".parts li[data-p]", cardOf(row)).map(part => [one("b", part).textContent, +part.dataset.p]));
const picker = (label, rows, chosen) => {
  const box = make("label", label);
  const select = make("select");
  rows.forEach((row, i) => { const option = make("option", nameOf(row)); option.value = i; select.append(option); });
  select.value = Math.min(chosen, rows.length - 1);
  box.append(select);
  return [box, select];
};
const side = row => {
  const box = make("div");
  const card = cardOf(row);
  box.append(make("h4", nameOf(row)));
  const caution = one(".caution", card);
  if (caution) box.append(caution.cloneNode(true));
  box.append(make("p", one(".place", card).textContent.trim(), "small"), make("p", one(".verdict", card).textContent));
  const link = make("a", "The whole card");
  link.href = "#" + row.dataset.row;
  link.addEventListener("click", () => show(row.closest(".target"), "ladder"));
  box.append(link);
  return box;
};
const svg = (name, attributes) => {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
};
const bar = (points, widest) => {
  const width = Math.abs(points) / widest * 50;
  const box = svg("svg", {});
  box.append(svg("rect", { class: points < 0 ? "against" : "for", x: (points < 0 ? 50 - width : 50) + "%", width: width + "%" }));
  return box;
};
const apart = (first, second) => {
  const [own, other] = [partsOf(first), partsOf(second)];
  return [...new Set([...own.keys(), ...other.keys()])].map(name => [name, (own.get(name) || 0) - (other.get(name) || 0)]);
};
const differences = (first, second, names) => {
  const parts = apart(first, second).filter(([, points]) => tenth(points) !== 0).sort((a, b) => Math.abs(b[1]) - Math.abs(a[1]) || (a[0] < b[0] ? -1 : 1));
  const widest = Math.max(1, ...parts.map(part => Math.abs(part[1])));
  const table = make("table", "", "bars");
  const head = table.createTHead().insertRow();
  const sides = make("th");
  sides.append(make("span", "second"), make("span", "first"));
  head.append(make("td"), sides, make("th", "points", "n"));
  const body = table.createTBody();
  const line = (section, name, points) => {
    const row = section.insertRow();
    const label = make("th", name);
    label.scope = "row";
    row.append(label);
    const chart = row.insertCell();
    if (section === body) chart.append(bar(points, widest));
    row.insertCell().append(signed(points));
    row.lastElementChild.className = "n";
  };
  for (const [name, points] of parts) line(body, name, points);
  line(table.createTFoot(), "difference", +first.dataset.score - +second.dataset.score);
  const level = names.filter(name => !parts.some(part => part[0] === name));
  return [table, make("p", (level.length ? "Level on " + join(level) + ". " : "") + "Bars to the right are for the first movement. Parts are rounded after adding.", "small")];
};
const spoken = (first, second) => {
  if (first === second) return "Pick two different movements.";
  const points = +first.dataset.score - +second.dataset.score;
  const size = Math.abs(tenth(points)).toFixed(1);
  const level = Math.abs(points) < 0.5;
  return level ? "The " + lower(nameOf(first)) + " and the " + lower(nameOf(second)) + " are level."
    : "The " + lower(nameOf(first)) + " scores " + size + " points " + (points > 0 ? "above" : "below") + " the " + lower(nameOf(second)) + ".";
};
const comparePanel = (target, panel) => {
  const rows = all(".row", target);
  const [left, first] = picker("First", rows, 0);
  const [right, second] = picker("Second", rows, 1);
  const pick = make("div", "", "pick");
  pick.append(left, right);
  const out = make("div");
  out.setAttribute("aria-live", "polite");
  const draw = () => {
    const [a, b] = [rows[first.value], rows[second.value]];
    out.replaceChildren(make("p", spoken(a, b), "verdict"));
    if (a === b) return;
    const sides = make("div", "", "sides");
    sides.append(side(a), side(b));
    out.append(sides, ...differences(a, b, [...partsOf(a).keys()]));
  };
  [first, second].forEach(select => select.addEventListener("change", draw));
  panel.append(make("h3", "Compare two"), pick, out);
  draw();
};
