/** Work done beside the page by a worker: one at a time, the one before is given up. */

/** As much of a Worker as is used. */
export interface WorkerOf<To, From> {
  postMessage(message: To): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<From>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** A worker as made; null where the browser gives none, and the page then says so or works by itself. */
export const started = <To, From>(make: () => WorkerOf<To, From>): WorkerOf<To, From> | null => {
  try {
    return make();
  } catch {
    return null;
  }
};

export interface Beside<To, From> {
  /** Asks a fresh worker; false where there is none. What fails is told and the worker let go. */
  ask(message: To, told: (answer: From) => void, failed: (why: string) => void): boolean;
  /** Lets the worker go. */
  leave(): void;
}

export const besideOf = <To, From>(make: () => WorkerOf<To, From> | null): Beside<To, From> => {
  let at: WorkerOf<To, From> | null = null;
  const leave = (): void => {
    at?.terminate();
    at = null;
  };
  return {
    leave,
    ask: (message, told, failed) => {
      leave();
      const worker = make();
      if (worker === null) return false;
      at = worker;
      worker.onmessage = ({ data }) => told(data);
      worker.onerror = ({ message: why }) => {
        leave();
        failed(why);
      };
      worker.postMessage(message);
      return true;
    },
  };
};
