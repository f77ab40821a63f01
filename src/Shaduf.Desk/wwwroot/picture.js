// A picture is fetched over plain HTTP and stands in the page itself, so that its texts have the page's fonts and can
// be read out. The last one stays until the next has come.
customElements.define(
  "desk-picture",
  class extends HTMLElement {
    static observedAttributes = ["src"];

    async attributeChangedCallback(_, before, src) {
      if (!src || src === before) {
        return;
      }
      try {
        const answer = await fetch(src);
        const text = answer.ok ? await answer.text() : null;
        if (text !== null && this.getAttribute("src") === src) {
          this.innerHTML = text;
        }
      } catch {
        // The desk is gone: its notice says so.
      }
    }
  },
);
