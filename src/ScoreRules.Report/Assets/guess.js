// The learner places a movement and says what decides it, then reads the trail and what was forgotten.
const tierNames = target => all(".tier", target).map(tier => one("h3", tier).childNodes[1].textContent.trim());
const tierOf = row => all(".tier", row.closest(".target")).indexOf(row.closest(".tier"));
const benchmarkOf = target => all(".row", target).find(row => one(".here", row));
const effects = row => {
  const bench = benchmarkOf(row.closest(".target"));
  const parts = bench ? apart(row, bench) : [...partsOf(row)];
  return parts.filter(([, points]) => Math.abs(points) >= 1).sort((a, b) => Math.abs(b[1]) - Math.abs(a[1]));
};
const choices = (names, many) => {
  const box = make("div", "", "choices");
  const buttons = names.map(name => {
    const button = make("button", name);
    button.type = "button";
    button.setAttribute("aria-pressed", "false");
    button.addEventListener("click", () => {
      const on = button.getAttribute("aria-pressed") !== "true";
      if (!many) buttons.forEach(other => other.setAttribute("aria-pressed", "false"));
      button.setAttribute("aria-pressed", String(on));
    });
    return button;
  });
  box.append(...buttons);
  return [box, () => buttons.filter(button => button.getAttribute("aria-pressed") === "true").map(button => button.textContent), buttons];
};
const direction = (guessed, real) => guessed < 0 ? "You left it open." : guessed === real ? "You placed it where the house does."
  : "You placed it " + (Math.abs(guessed - real) === 1 ? "one tier" : Math.abs(guessed - real) + " tiers") + (guessed < real ? " higher." : " lower.");
const forgotten = (row, named, guessed) => {
  const decided = one(".decided", cardOf(row));
  const open = effects(row).filter(([name]) => !named.includes(name));
  const pull = guessed >= 0 && guessed < tierOf(row) ? open.filter(([, points]) => points < 0) : guessed > tierOf(row) ? open.filter(([, points]) => points > 0) : open;
  if (decided && guessed !== tierOf(row)) return "The rule you did not name: " + decided.dataset.decides + ". " + decided.textContent;
  if (pull.length) return "The largest thing you did not name: " + pull[0][0] + ", " + signed(pull[0][1]) + " points.";
  return open.length ? "What you did not name: " + open[0][0] + ", " + signed(open[0][1]) + " points." : "You named everything that is worth a point or more.";
};
const answerOf = (row, named, guessed, names) => {
  const box = make("div", "", "answer");
  box.setAttribute("aria-live", "polite");
  const card = cardOf(row);
  box.append(make("h4", "What the house says: " + names[tierOf(row)]), make("p", direction(guessed, tierOf(row)), "placed"));
  const caution = one(".caution", card);
  if (caution) box.append(caution.cloneNode(true));
  box.append(make("p", one(".verdict", card).textContent, "verdict"), make("p", forgotten(row, named, guessed), "missed"));
  const list = make("ul");
  for (const [name, points] of effects(row)) list.append(make("li", (named.includes(name) ? "You named it: " : "Not named: ") + name + ", " + signed(points) + " points."));
  for (const name of named.filter(each => !effects(row).some(part => part[0] === each))) list.append(make("li", "You named it, and it is nearly level with the benchmark: " + name + "."));
  box.append(list);
  const trail = one(".trail", card).cloneNode(true);
  trail.open = true;
  box.append(trail);
  return box;
};
const guessPanel = (target, panel) => {
  const rows = all(".row", target).filter(row => !one(".here", row) && !row.hidden).sort((a, b) => nameOf(a) < nameOf(b) ? -1 : 1);
  const names = tierNames(target);
  // All parts of the list, so that the choice itself gives nothing away.
  const everything = [...new Set(all(".row", target).flatMap(each => [...partsOf(each).keys()]))].sort();
  const stop = one(".results>.stop", target).cloneNode(true);
  let at = 0, hits = 0, asked = 0;
  const score = make("p", "", "small");
  const ask = () => {
    const row = rows[at % rows.length];
    const bench = benchmarkOf(target);
    const title = make("h3", "Where does the " + lower(nameOf(row)) + " stand?");
    const [tierBox, tier, tierButtons] = choices(names, false);
    const open = make("button", "I cannot tell yet", "quiet");
    open.type = "button";
    tierBox.append(open);
    const [partBox, parts] = choices(everything, true);
    const show = make("button", "Show what the house says", "do");
    show.type = "button";
    const next = make("button", "Next movement", "do");
    next.type = "button";
    next.hidden = true;
    const out = make("div");
    open.addEventListener("click", () => tierButtons.forEach(button => button.setAttribute("aria-pressed", "false")));
    show.addEventListener("click", () => {
      const guessed = names.indexOf(tier()[0]);
      asked += 1;
      if (guessed === tierOf(row)) hits += 1;
      out.replaceChildren(answerOf(row, parts(), guessed, names));
      score.textContent = hits + " of " + asked + " placed where the house does.";
      show.hidden = true;
      next.hidden = false;
      next.focus();
    });
    next.addEventListener("click", () => { at += 1; ask(); one("h3", panel).focus(); });
    title.tabIndex = -1;
    const caution = one(".first", row);
    panel.replaceChildren(make("p", "Guess first, " + (at % rows.length + 1) + " of " + rows.length, "small"), title,
      ...(caution ? [make("p", caution.textContent, "first")] : []),
      make("p", bench ? "Measured against the " + lower(nameOf(bench)) + ". Choose a tier." : "Choose a tier."), tierBox,
      make("p", "What decides it? Choose as many as you like."), partBox, make("p"), show, out, next, score, stop);
  };
  if (rows.length) ask(); else panel.append(make("p", "Nothing is left to guess in your view."));
};
