const root = document.documentElement;
const all = (selector, from) => [...(from || document).querySelectorAll(selector)];
const one = (selector, from) => (from || document).querySelector(selector);
const make = (name, text, className) => {
  const element = document.createElement(name);
  if (text) element.textContent = text;
  if (className) element.className = className;
  return element;
};
const targets = all(".target");
const cardOf = row => document.getElementById(row.dataset.row);
const nameOf = row => one("h4 a", row).textContent;
const cap = text => text.charAt(0).toUpperCase() + text.slice(1);
const lower = text => text.charAt(0).toLowerCase() + text.slice(1);
const join = names => names.length < 2 ? names.join("") : names.slice(0, -1).join(", ") + " and " + names[names.length - 1];
// Half away from zero after rounding to a billionth, as everywhere in the program.
const tenth = points => { const value = Math.round(Math.abs(points) * 1e9) / 1e9; return Math.sign(points) * Math.floor(value * 10 + 0.5) / 10; };
const signed = points => { const value = tenth(points); return value === 0 ? "0" : (value > 0 ? "+" : "\u2212") + Math.abs(value).toFixed(1); };

all("#tools,.views").forEach(part => { part.hidden = false; });
all("input[name=theme]").forEach(input => input.addEventListener("change", () => {
  if (input.value) root.dataset.theme = input.value; else delete root.dataset.theme;
}));

// Kept for this visit only, and by no other page.
one("#large").addEventListener("change", event => { root.toggleAttribute("data-large", event.target.checked); });

const reveal = () => {
  const place = location.hash && document.getElementById(decodeURIComponent(location.hash.slice(1)));
  for (let at = place; at; at = at.parentElement) if (at.localName === "details") at.open = true;
  if (place) place.scrollIntoView();
};
addEventListener("hashchange", reveal);
document.addEventListener("click", event => {
  const link = event.target.closest("a[href^='#']");
  if (link && link.hash === location.hash) reveal();
});
reveal();
