// What stands in a box is posted over plain HTTP each time that it changes, one after the other.
export function follow(box, url, longest) {
  let last = Promise.resolve();
  const post = () => {
    last = last.then(() => fetch(url, { method: "POST", body: box.value.slice(0, longest + 1) })).catch(() => {});
  };
  box.addEventListener("input", post);
  if (box.value) {
    post();
  }
}
