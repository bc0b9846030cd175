/** Live-line tools: their tests and whether one may be used today. */
import { useState } from 'preact/hooks';
import {
  designTest,
  inServiceTest,
  type StickMaterial,
  stickFaults,
  stickTestMonths,
} from '../../engine/standards/liveLineTools.ts';
import { dueDate } from '../../engine/standards/testInterval.ts';
import { format, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { Card } from './Card.tsx';
import { Field, Pick, Tick, useDay, useQuantity } from './fields.tsx';

export const SticksCard = ({ system, today }: { system: UnitSystem; today: string }) => {
  const length = useQuantity(system === 'us' ? '8 ft' : '2.4 m', 'length', system, { least: 0, above: true, most: 15 });
  const [material, setMaterial] = useState<StickMaterial>('fibreglass');
  const tested = useDay(today);
  const on = useDay(today);
  const [wiped, setWiped] = useState(true);
  const [inspected, setInspected] = useState(true);
  const [defect, setDefect] = useState(false);
  const faults =
    tested.value !== null && on.value !== null
      ? stickFaults({ testDate: tested.value, wiped, inspected, defect }, on.value)
      : null;
  const test = (made: typeof designTest): { readonly value: string | null; readonly note?: string } => {
    if (length.value === null) return { value: null };
    const { volts, seconds, source } = made(material, length.value);
    return {
      value: `${format(volts, 'voltage', system)} for ${format(seconds / 60, 'duration', system)}`,
      note: source,
    };
  };
  return (
    <Card
      title="Live-line tools"
      says="What a hot stick has to stand, and what (j)(2) asks of it before it protects anybody."
      fields={
        <>
          <Field label="Length of the insulating part" typed={length} />
          <Pick
            label="Material"
            options={[
              ['fibreglass', 'fibreglass'],
              ['wood', 'wood'],
            ]}
            value={material}
            onPick={setMaterial}
          />
          <Field label="Last examination and test" typed={tested} />
          <Field label="Day of use" typed={on} />
          <Tick label="Wiped clean before use" on={wiped} set={setWiped} />
          <Tick label="Looked over before use" on={inspected} set={setInspected} />
          <Tick label="A defect, or dirt that wiping leaves" on={defect} set={setDefect} />
        </>
      }
      answers={[
        {
          label: 'May it be used on that day',
          value: faults === null ? null : faults.length === 0 ? 'nothing in (j)(2) stands against it' : 'no',
        },
        {
          label: 'Next test due by',
          value: tested.value === null ? null : dueDate(tested.value, stickTestMonths),
          note: `${stickTestMonths} months; (j)(2)(iii)`,
        },
        { label: 'Test in service', ...test(inServiceTest) },
        { label: 'Test by design', ...test(designTest) },
      ]}
      warnings={faults ?? []}
      sources={['29 CFR 1910.269(j), as amended through 81 FR 83006 (Nov. 18, 2016)']}
      leaves="How much a wet, dirty or overdue stick lets through: the rule gives no figure, so none is given here."
    />
  );
};
