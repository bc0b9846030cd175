/** The keys, on a slip. */
import { Slip } from '../parts/Slip.tsx';
import type { Playing } from '../types.ts';
import { keys } from './keys.ts';

export const KeysSlip = ({ playing }: { playing: Playing }) => {
  const close = (): void => {
    playing.dialog.value = null;
  };
  return (
    <Slip title="Keys" onClose={close}>
      <dl class="keys">
        {keys.map(({ key, does }) => (
          <div key={key}>
            <dt>
              <kbd>{key.toUpperCase()}</kbd>
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
        <div>
          <dt>
            <kbd>Tab</kbd> <kbd>↑ ↓</kbd> <kbd>Enter</kbd>
          </dt>
          <dd>from field to field, within a list, take it</dd>
        </div>
        <div>
          <dt>
            <kbd>Esc</kbd>
          </dt>
          <dd>put away what was opened last</dd>
        </div>
      </dl>
      <p class="buttons">
        <button type="button" class="primary" onClick={close}>
          Close
        </button>
      </p>
    </Slip>
  );
};
