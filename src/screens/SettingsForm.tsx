/** Units, sound, motion, brightness, keys: kept on the device. */
import type { Signal } from '@preact/signals';
import type { Settings } from './types.ts';

const flags = [
  ['sound', 'Sound', 'Every sound has a caption as well.'],
  ['lessMotion', 'Less motion', 'The view cuts instead of gliding.'],
  ['letterKeys', 'Single-letter keys', 'C, F, B, A and others open their sheets; ? shows them all.'],
  ['askSure', 'Ask how sure', 'With each finding, how sure you are.'],
] as const;

export const SettingsForm = ({ settings }: { settings: Signal<Settings> }) => {
  const now = settings.value;
  const set = (change: Partial<Settings>): void => {
    settings.value = { ...settings.value, ...change };
  };
  return (
    <div class="settings">
      <fieldset>
        <legend>Units</legend>
        {(['us', 'metric'] as const).map((units) => (
          <label key={units}>
            <input type="radio" name="units" checked={now.units === units} onChange={() => set({ units })} />
            {units === 'us' ? 'feet, °F, mph' : 'metres, °C, m/s'}
          </label>
        ))}
      </fieldset>
      {flags.map(([name, label, says]) => (
        <label key={name}>
          <input
            type="checkbox"
            checked={now[name]}
            onChange={(event) => set({ [name]: event.currentTarget.checked })}
          />
          <span>
            {label} <span class="hint">{says}</span>
          </span>
        </label>
      ))}
      <label class="range">
        <span>Volume</span>
        <input
          type="range"
          min="0"
          max="1"
          step="0.05"
          value={now.volume}
          disabled={!now.sound}
          aria-valuetext={`${Math.round(now.volume * 100)} %`}
          onInput={(event) => set({ volume: Number(event.currentTarget.value) })}
        />
        <output>{Math.round(now.volume * 100)} %</output>
      </label>
      <label class="range">
        <span>Brightness of the picture</span>
        <input
          type="range"
          min="0.5"
          max="2"
          step="0.1"
          value={now.brightness}
          aria-valuetext={`${Math.round(now.brightness * 100)} %`}
          onInput={(event) => set({ brightness: Number(event.currentTarget.value) })}
        />
        <output>{Math.round(now.brightness * 100)} %</output>
      </label>
    </div>
  );
};
