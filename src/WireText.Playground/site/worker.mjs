// Runs the core away from the page, so that writing never waits for it. One question at a time, in the order in which they come.
import { dotnet } from "./_framework/dotnet.js";

const runtime = await dotnet.create();
const { Exports } = (await runtime.getAssemblyExports("WireText.Playground")).WireText.Playground;

self.addEventListener("message", ({ data: { id, name, values } }) => {
  try {
    self.postMessage({ id, answer: Exports[name](...values) });
  } catch (error) {
    self.postMessage({ id, trouble: String(error) });
  }
});
self.postMessage({ id: 0 });
