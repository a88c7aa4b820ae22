// A link that carries a text: behind the sign # of the address, which no server is told. It is text and stays text.

/** The longest text that a link carries, in letters. Chosen: several times a harness of a hundred wires. */
export const mostLetters = 20000;

/** The longest link part that is read, in letters. Chosen: what a text of that length comes to when it hardly packs. */
export const mostPacked = 40000;

const start = "#text=";

/** The end of an address that carries the text; null where it is too long. */
export async function linkOf(text) {
  if (text.length > mostLetters) {
    return null;
  }
  const packed = await through(new CompressionStream("deflate-raw"), new TextEncoder().encode(text));
  let bytes = "";
  for (const byte of packed) {
    bytes += String.fromCharCode(byte);
  }
  const link = start + btoa(bytes).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
  return link.length > mostPacked ? null : link;
}

/** The text that the end of an address carries; null where it carries none, or none that can be read. */
export async function textOf(link) {
  if (!link.startsWith(start) || link.length > mostPacked) {
    return null;
  }
  try {
    const bytes = atob(link.slice(start.length).replaceAll("-", "+").replaceAll("_", "/"));
    const unpacked = await through(new DecompressionStream("deflate-raw"), Uint8Array.from(bytes, (byte) => byte.charCodeAt(0)));
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(unpacked);
    return text.length > mostLetters ? null : text;
  } catch {
    return null;
  }
}

/** A few letters may unpack to gigabytes: it ends where no text is as long. */
async function through(stream, bytes) {
  const writer = stream.writable.getWriter();
  const written = writer.write(bytes).then(() => writer.close());
  written.catch(() => {});
  const pieces = [];
  let length = 0;
  const reader = stream.readable.getReader();
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
    length += piece.value.length;
    if (length > 4 * mostLetters) {
      await reader.cancel();
      throw new RangeError("it is too long");
    }
    pieces.push(piece.value);
  }
  await written;
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
