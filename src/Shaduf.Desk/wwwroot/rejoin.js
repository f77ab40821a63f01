// The page lost the desk. Once the desk runs again the page is opened anew: what was confirmed is in it.
const notice = document.getElementById("components-reconnect-modal");
const waitMs = 1000;

async function whenBack() {
  try {
    await fetch("/", { method: "HEAD", cache: "no-store" });
    location.reload();
  } catch {
    setTimeout(whenBack, waitMs);
  }
}

notice.addEventListener("components-reconnect-state-changed", (change) => {
  if (change.detail.state === "rejected" || change.detail.state === "failed") {
    whenBack();
  }
});
