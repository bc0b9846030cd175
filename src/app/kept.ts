/** Where the log of the running drill and the settings are kept on the device; a full or forbidden store is told, never fatal. */
import { parseLog } from '../engine/acts/logForm.ts';
import type { Log } from '../engine/acts/types.ts';

/** As much of localStorage as is used. */
export interface TextStore {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
}

export type Outcome = { readonly ok: true } | { readonly ok: false; readonly why: string };

export interface Kept {
  /** The log that was kept last; null when there is none or it is torn. */
  log(): Log | null;
  saveLog(log: Log): Outcome;
  forgetLog(): void;
  text(key: string): string | null;
  saveText(key: string, value: string): Outcome;
}

/** Where the log of the running drill lies. */
export const logKey = 'loose-tie.drill';

const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Storage behind a store; `null` is a browser that gives none, and everything then lives as long as the page. */
export const createKept = (store: TextStore | null): Kept => {
  const memory = new Map<string, string>();
  const text = (key: string): string | null => {
    const here = memory.get(key);
    if (here !== undefined) return here;
    try {
      return store?.getItem(key) ?? null;
    } catch {
      return null; // what cannot be read is as if never kept
    }
  };
  const saveText = (key: string, value: string): Outcome => {
    if (store === null) {
      memory.set(key, value);
      return { ok: false, why: 'this browser keeps nothing' };
    }
    try {
      store.setItem(key, value);
      memory.delete(key);
      return { ok: true };
    } catch (error) {
      memory.set(key, value);
      return { ok: false, why: reason(error) };
    }
  };
  return {
    text,
    saveText,
    log: () => {
      const kept = text(logKey);
      if (kept === null) return null;
      const read = parseLog(kept);
      return read.ok ? read.log : null;
    },
    saveLog: (log) => saveText(logKey, JSON.stringify(log)),
    forgetLog: () => {
      memory.delete(logKey);
      try {
        store?.removeItem(logKey);
      } catch {
        // a store that cannot be written holds nothing of this drill either
      }
    },
  };
};

/** The browser's own store, if it gives one. */
export const browserStore = (): TextStore | null => {
  try {
    const probe = 'loose-tie.probe';
    localStorage.setItem(probe, probe);
    localStorage.removeItem(probe);
    return localStorage;
  } catch {
    return readableStore();
  }
};

/** A full store can still be read. */
const readableStore = (): TextStore | null => {
  try {
    return localStorage.length >= 0 ? localStorage : null;
  } catch {
    return null;
  }
};
