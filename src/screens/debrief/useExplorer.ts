/** What is being looked at of a drill that is over: a moment, or a place to stand at; played on by itself until the end. */
import { useEffect, useState } from 'preact/hooks';
import type { Vantage } from './moments.ts';

export interface Explorer {
  /** How many acts have been done at that moment. */
  readonly acts: number;
  readonly playing: boolean;
  /** A place that was jumped to; null: where the trainee stood. */
  readonly vantage: Vantage | null;
  /** False until it is first used: until then nothing heavy is shown. */
  readonly used: boolean;
  to(acts: number): void;
  play(on: boolean): void;
  jump(vantage: Vantage): void;
}

/** Milliseconds a moment stands while it is played. */
const pace = 1100;

export const useExplorer = (last: number): Explorer => {
  const [acts, setActs] = useState(last);
  const [playing, setPlaying] = useState(false);
  const [vantage, setVantage] = useState<Vantage | null>(null);
  const [used, setUsed] = useState(false);
  useEffect(() => {
    if (!playing) return;
    if (acts >= last) {
      setPlaying(false);
      return;
    }
    const timer = setTimeout(() => setActs(acts + 1), pace);
    return () => clearTimeout(timer);
  }, [playing, acts, last]);
  return {
    acts,
    playing,
    vantage,
    used,
    to: (next) => {
      setUsed(true);
      setPlaying(false);
      setVantage(null);
      setActs(Math.min(last, Math.max(0, next)));
    },
    play: (on) => {
      setUsed(true);
      setVantage(null);
      if (on && acts >= last) setActs(0);
      setPlaying(on);
    },
    jump: (next) => {
      setUsed(true);
      setPlaying(false);
      setVantage(next);
    },
  };
};
