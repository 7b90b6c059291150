/* A file let fall on a .drop goes into the file field inside it, as if it had been chosen there. */
"use strict";
(() => {
  const place = (event) => event.target.closest?.(".drop");
  const carries = (event) => [...(event.dataTransfer?.types || [])].includes("Files");
  document.addEventListener("dragover", (event) => {
    const here = place(event);
    if (!here || !carries(event)) return;
    event.preventDefault();
    here.classList.add("over");
  });
  document.addEventListener("dragleave", (event) => place(event)?.classList.remove("over"));
  document.addEventListener("drop", (event) => {
    const here = place(event), field = here?.querySelector('input[type="file"]');
    if (!field || !carries(event)) return;
    event.preventDefault();
    here.classList.remove("over");
    const fallen = new DataTransfer();
    for (const file of [...event.dataTransfer.files].slice(0, field.multiple ? undefined : 1)) fallen.items.add(file);
    field.files = fallen.files;
    field.dispatchEvent(new Event("change", { bubbles: true }));
  });
})();
