/** Somebody's own scenario file: read, its problems told with their lines, else handed on. It stays on this device. */
import { useState } from 'preact/hooks';
import type { Desk, Offered } from '../types.ts';
import { FileChoice } from './FileChoice.tsx';

export const OwnScenario = ({ desk, opened }: { desk: Desk; opened: (offered: Offered) => void }) => {
  const [problems, setProblems] = useState<readonly string[]>([]);
  const open = async (chosen: File): Promise<void> => {
    const read = await desk.openScenario(chosen);
    setProblems(read.ok ? [] : read.problems);
    if (read.ok) opened(read.offered);
  };
  return (
    <>
      <FileChoice
        label="Scenario file"
        accept=".yaml,.yml"
        words="Choose a scenario file"
        onFile={(file) => void open(file)}
      />
      {problems.length > 0 && (
        <div class="problem" role="alert">
          <p>It cannot be read as a scenario:</p>
          <ul>
            {problems.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
};
