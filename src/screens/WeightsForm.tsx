/** By what weights drills are judged here, and an instructor's file of others. */
import { FileChoice } from './parts/FileChoice.tsx';
import type { Desk } from './types.ts';

export const WeightsForm = ({ desk }: { desk: Desk }) => {
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
      <p class="buttons">
        <FileChoice
          label="File of weights"
          accept=".json,application/json"
          words="Choose a file of weights"
          onFile={(file) => void desk.openWeights(file)}
        />
        {!isUsual && (
          <button type="button" onClick={() => desk.usualWeights()}>
            Back to the usual weights
          </button>
        )}
      </p>
    </>
  );
};
