const printPanel = (target, panel) => {
  const [scope, chosen, buttons] = choices(["This list", "This list with a page for each movement", "The whole edition"], false);
  buttons[0].setAttribute("aria-pressed", "true");
  const large = make("label", " Large type");
  const trails = make("label", " With the trails");
  const [largeBox, trailsBox] = [make("input"), make("input")];
  largeBox.type = trailsBox.type = "checkbox";
  largeBox.checked = one("#large").checked;
  large.prepend(largeBox);
  trails.prepend(trailsBox);
  const go = make("button", "Print", "do");
  go.type = "button";
  const options = make("p");
  options.append(large, make("br"), trails);
  go.addEventListener("click", () => {
    const choice = chosen()[0] || "This list";
    const opened = trailsBox.checked ? all(".trail:not([open])", choice === "The whole edition" ? document : target) : [];
    opened.forEach(trail => { trail.open = true; });
    root.toggleAttribute("data-large", largeBox.checked);
    if (choice !== "The whole edition") { root.dataset.only = ""; root.dataset.print = choice === "This list" ? "list" : "cards"; target.dataset.printed = ""; }
    print();
    opened.forEach(trail => { trail.open = false; });
    root.toggleAttribute("data-large", one("#large").checked);
    for (const key of ["only", "print"]) delete root.dataset[key];
    delete target.dataset.printed;
  });
  panel.append(make("h3", "Print"), make("p", "A sheet for the list, and, if you like, one for each movement. Cautions and the edition stand on every sheet."), scope, options, make("p"), go);
};
const panels = { compare: comparePanel, guess: guessPanel, print: printPanel };
const show = (target, view) => {
  const panel = one(".panel", target);
  panel.replaceChildren();
  panel.hidden = view === "ladder";
  one(".results", target).hidden = view === "guess";
  all(".views button", target).forEach(button => button.setAttribute("aria-pressed", String(button.dataset.view === view)));
  if (panels[view]) panels[view](target, panel);
};
for (const target of targets) all(".views button", target).forEach(button => button.addEventListener("click", () => show(target, button.dataset.view)));
