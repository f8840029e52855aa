// Filtering sets aside and never scores anew. What a movement needs is never guessed: not recorded stays, and is said.
const kitBoxes = all("#kit input");
const soreBoxes = all("#sore input");
const joint = box => ({ at: +box.value, name: box.dataset.name, low: +box.dataset.low, high: +box.dataset.high });

const lacks = (row, kit) => row.dataset.kit === "?" ? [] : row.dataset.kit.split(" ").filter(code => code && !kit.has(code));
const rated = (row, sore) => row.dataset.load.split(" ")[sore.at];
const loads = (row, sore) => { const load = rated(row, sore); return load !== "?" && +load > (sore.low + sore.high) / 2; };

const why = (row, kit, sore) => {
  const missing = lacks(row, kit).map(code => kitBoxes.find(box => box.value === code)).map(box => box.nextSibling.textContent);
  if (missing.length) return "Not in this gym, " + missing.join(", ");
  const joints = sore.filter(each => loads(row, each)).map(each => each.name);
  return joints.length ? "Avoid for now, rated to load the " + joints.join(" and the ") + " more" : "";
};

const flags = (row, kit, sore) => {
  const told = sore.filter(each => rated(row, each) === "?" || +rated(row, each) > each.low).map(each => rated(row, each) === "?"
    ? cap(each.name) + ": could not tell, not recorded."
    : cap(each.name) + ": lower in this flag (" + rated(row, each) + " of " + each.high + "), not free of it.");
  if (row.dataset.kit === "?" && kit.size < kitBoxes.length) told.push("Kit: could not tell, not recorded.");
  return told.join(" ");
};

const cost = (rows, left) => {
  if (!left.length) return "Nothing is left in this list.";
  if (left[0] === rows[0]) return "Nothing at the top is lost.";
  const points = row => tenth(+row.dataset.score).toFixed(1);
  return "The first choice falls from " + points(rows[0]) + " (" + lower(nameOf(rows[0])) + ") to " + points(left[0]) + " (" + lower(nameOf(left[0])) + ").";
};

const warn = (target, active) => {
  all(".referral", target).forEach(block => block.remove());
  if (!active) return;
  const block = one("#referral").cloneNode(true);
  block.removeAttribute("id");
  block.removeAttribute("role");
  target.prepend(block);
};

const list = (target, left) => {
  const line = one("#contents [data-to=" + target.id + "] span");
  line.textContent = left.length ? join(left.slice(0, 2).map(nameOf).map(lower)) : "nothing is left";
};

const mark = (row, reason) => {
  const card = cardOf(row);
  const flag = one(".setaside", card) || card.insertBefore(make("p", "", "setaside"), card.firstChild);
  flag.textContent = reason ? "Set aside in your view. " + reason + "." : "";
  flag.hidden = !reason;
};

const filterTarget = (target, kit, sore, active) => {
  const rows = all(".row", target);
  const reasons = new Map();
  for (const row of rows) {
    const reason = why(row, kit, sore);
    row.hidden = reason !== "";
    mark(row, reason);
    if (reason) reasons.set(reason, [...(reasons.get(reason) || []), nameOf(row)]);
    const flag = one(".flag", row);
    flag.textContent = flags(row, kit, sore);
    flag.hidden = !flag.textContent;
  }
  for (const tier of all(".tier", target)) tier.classList.toggle("bare", all(".row", tier).length > 0 && all(".row", tier).every(row => row.hidden));
  const left = rows.filter(row => !row.hidden);
  list(target, left);
  warn(target, sore.length > 0);
  const mine = one(".mine", target);
  mine.hidden = !active;
  mine.textContent = active ? left.length + " of " + rows.length + " movements remain. " + cost(rows, left) : "";
  const aside = one(".aside", target);
  aside.hidden = reasons.size === 0;
  aside.replaceChildren();
  if (reasons.size) {
    const note = make("div", "", "note");
    const list = make("ul");
    note.append(make("h3", "Set aside in your view", "minor"), make("p", "They keep their scores and tiers; your view only does not offer them."), list);
    for (const [reason, names] of reasons) {
      const item = make("li");
      item.append(make("b", reason + ": "), names.map(lower).join(", ") + ".");
      list.append(item);
    }
    aside.append(note);
  }
};

const filter = () => {
  const kit = new Set(kitBoxes.filter(box => box.checked).map(box => box.value));
  const sore = soreBoxes.filter(box => box.checked).map(joint);
  const referral = one("#referral");
  referral.hidden = sore.length === 0;
  const spoken = sore.length ? join(sore.map(each => each.name)) : "joint";
  referral.lastElementChild.textContent = "This page cannot judge a sore " + spoken + ". It only sets aside movements rated to load it more.";
  if (kitBoxes.length) one("#kitsaid").textContent = kit.size === kitBoxes.length ? "all of it" : kit.size ? kit.size + " of " + kitBoxes.length : "nothing";
  for (const target of targets) filterTarget(target, kit, sore, sore.length > 0 || kit.size < kitBoxes.length);
  document.dispatchEvent(new CustomEvent("filtered"));
};

[...kitBoxes, ...soreBoxes].forEach(box => box.addEventListener("change", filter));
if (kitBoxes.length) {
  const set = checked => () => { kitBoxes.forEach(box => { box.checked = checked; }); filter(); };
  one("#kitall").addEventListener("click", set(true));
  one("#kitnone").addEventListener("click", set(false));
}
