// Runs before the page is drawn, so that a dark page never flashes white.
(function () {
  const chosen = localStorage.getItem("stilewright.light");
  if (chosen === "dark") document.documentElement.setAttribute("data-dark", "");
  if (chosen === "light") document.documentElement.setAttribute("data-light", "");
})();
