// Files for whoever works here: made in the page, and handed over by the browser.

/** The width of a picture as PNG, in dots. Chosen: a sheet at 300 dots an inch. */
const pngWidth = 2480;

/** A name for a file from the title of a circuit. */
export function fileNameOf(title, ending) {
  const name = (title ?? "").toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, "-").replaceAll(/^-+|-+$/g, "").slice(0, 60);
  return `${name || "guitar"}.${ending}`;
}

export function save(name, content, type) {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10000);
}

/** A drawing as PNG, in the fonts that this machine has. */
export async function pngOf(svg) {
  const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = pngWidth;
    canvas.height = Math.round((pngWidth * image.naturalHeight) / image.naturalWidth);
    canvas.getContext("2d").drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("the picture is too large for this browser"))), "image/png"),
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}
