/** By what weights drills are judged here, and an instructor's file of others. */
import { useRef } from 'preact/hooks';
import type { Desk } from './types.ts';

export const WeightsForm = ({ desk }: { desk: Desk }) => {
  const file = useRef<HTMLInputElement>(null);
  const { name, isUsual } = desk.weights.value;
  return (
    <>
      <p>
        {isUsual
          ? 'Drills are judged by the usual weights.'
          : `Drills are judged by the weights \u201c${name}\u201d; each debrief says so.`}{' '}
        <span class="hint">
          An instructor may change them by a file, within limits; no file makes a potentially fatal exposure pass.
        </span>
      </p>
      <input
        ref={file}
        class="sr-only"
        type="file"
        tabIndex={-1}
        accept=".json,application/json"
        aria-label="File of weights"
        onChange={(event) => {
          const [first] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (first) void desk.openWeights(first);
        }}
      />
      <p class="buttons">
        <button type="button" onClick={() => file.current?.click()}>
          Choose a file of weights
        </button>
        {!isUsual && (
          <button type="button" onClick={() => desk.usualWeights()}>
            Back to the usual weights
          </button>
        )}
      </p>
    </>
  );
};
