// A column head sorts its table. A second press turns the order round; what has no number stays last; ties keep the order of the ranking.
const numberIn = text => parseFloat(text.replace("\u2212", "-").replace("over 99", "99.5").replace("under 1", "0.5"));
const keyOf = (cell, kind, names) => {
  const text = cell.textContent.trim();
  return kind === "tier" ? names.indexOf(text) : kind === "name" ? text.toLowerCase() : numberIn(text);
};
const before = (a, b, turn) => {
  if (Number.isNaN(a) || Number.isNaN(b)) return Number.isNaN(a) - Number.isNaN(b);
  return a === b ? 0 : (a < b ? -1 : 1) * turn;
};
const sortable = target => {
  const table = one(".table table", target);
  const [names, ranked] = [tierNames(target), [...table.tBodies[0].rows]];
  const heads = [...table.tHead.rows[0].cells];
  const sort = (head, at) => {
    const was = head.getAttribute("aria-sort");
    const rising = was ? was === "descending" : !("falls" in head.dataset);
    heads.forEach(other => other.removeAttribute("aria-sort"));
    head.setAttribute("aria-sort", rising ? "ascending" : "descending");
    const keys = new Map(ranked.map(row => [row, keyOf(row.cells[at], head.dataset.sorts, names)]));
    table.tBodies[0].append(...[...ranked].sort((a, b) => before(keys.get(a), keys.get(b), rising ? 1 : -1)));
  };
  heads.forEach((head, at) => {
    const button = make("button", head.textContent);
    button.type = "button";
    button.addEventListener("click", () => sort(head, at));
    head.replaceChildren(button);
  });
  heads[0].setAttribute("aria-sort", "ascending");
  one(".sorting", target).hidden = false;
};
targets.forEach(sortable);
