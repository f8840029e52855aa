const found = one("#found");
const entries = all(".card").map(card => ({
  id: one(".in", card).id,
  name: one("summary h3", card).textContent,
  where: card.closest(".target").dataset.name + ": " + one("summary span", card).textContent,
  words: (one("summary h3", card).textContent + ", " + card.dataset.names).toLowerCase(),
}));
one("#find").addEventListener("input", event => {
  const asked = event.target.value.trim().toLowerCase();
  found.replaceChildren();
  if (asked.length < 2) return;
  const hits = entries.filter(entry => entry.words.includes(asked));
  for (const entry of hits.slice(0, 12)) {
    const item = make("li");
    const link = make("a", entry.name);
    link.href = "#" + entry.id;
    item.append(link, " \u2013 " + entry.where);
    found.append(item);
  }
  if (hits.length === 0) found.append(make("li", "No movement here has \u201c" + event.target.value.trim() + "\u201d in its name."));
  if (hits.length > 12) found.append(make("li", "and " + (hits.length - 12) + " more"));
});
