// Asks the core, which runs in a worker of its own.

/** A core that is asked by name; the promise of an answer ends with what went wrong. */
export function createCore(worker) {
  const waiting = new Map();
  let last = 0;
  const ready = new Promise((resolve, reject) => {
    waiting.set(0, { resolve, reject });
  });
  worker.addEventListener("message", ({ data: { id, answer, trouble } }) => {
    const { resolve, reject } = waiting.get(id);
    waiting.delete(id);
    trouble === undefined ? resolve(answer) : reject(new Error(trouble));
  });
  worker.addEventListener("error", (event) => {
    for (const { reject } of waiting.values()) {
      reject(new Error(event.message));
    }
    waiting.clear();
  });
  return {
    ready,
    ask(name, ...values) {
      return new Promise((resolve, reject) => {
        waiting.set(++last, { resolve, reject });
        worker.postMessage({ id: last, name, values });
      });
    },
  };
}

/** Does work for the newest of what is given: while some of it is done, all but the last wait in vain. */
export function createLatest(work) {
  let next;
  let isBusy = false;
  return async function give(value) {
    next = { value };
    if (isBusy) {
      return;
    }
    isBusy = true;
    try {
      while (next !== undefined) {
        const { value: now } = next;
        next = undefined;
        await work(now, () => next !== undefined);
      }
    } finally {
      isBusy = false;
    }
  };
}
