// Keeps the whole site after the first visit: from then on it needs no network. A new version is another set of files.
const version = "@version";
const files = ["@files"];

self.addEventListener("install", (event) => {
  event.waitUntil(
    caches
      .open(version)
      .then((cache) => cache.addAll(files.map((file) => new Request(file, { cache: "reload" }))))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name.startsWith("wiretext-") && name !== version).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener("fetch", (event) => {
  event.respondWith(
    caches.open(version).then((cache) => cache.match(event.request, { ignoreSearch: true })).then((kept) => kept ?? fetch(event.request)),
  );
});
