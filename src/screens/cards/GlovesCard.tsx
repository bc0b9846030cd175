/** Rubber gloves and sleeves: class for a voltage, tests, intervals, cuff gap. */
import { useState } from 'preact/hooks';
import {
  cuffGap,
  gloveClasses,
  gloveRatings,
  requiredGloveClass,
  rubberTestMonths,
  voltageToCover,
} from '../../engine/standards/gloves.ts';
import { dueDate, withinInterval } from '../../engine/standards/testInterval.ts';
import { format, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { Card, Table } from './Card.tsx';
import { Field, Pick, Tick, useDay, useQuantity } from './fields.tsx';

export const GlovesCard = ({ system, today }: { system: UnitSystem; today: string }) => {
  const volts = useQuantity('12.47 kV', 'voltage', system, { least: 0, above: true });
  const [multiphase, setMultiphase] = useState(true);
  const [what, setWhat] = useState<'gloves' | 'sleeves'>('gloves');
  const tested = useDay(today);
  const on = useDay(today);
  const cover = volts.value === null ? null : voltageToCover(volts.value, multiphase);
  const needed = cover === null ? undefined : requiredGloveClass(cover);
  const months = rubberTestMonths[what];
  const inDate = tested.value !== null && on.value !== null ? withinInterval(tested.value, on.value, months) : null;
  const volt = (value: number): string => format(value, 'voltage', system, 4);
  return (
    <Card
      title="Gloves and sleeves"
      says="Which class of rubber covers a voltage, and until when its last test counts."
      fields={
        <>
          <Field label="System voltage, phase to phase" typed={volts} />
          <Tick label="More than one phase, or phase to phase, within reach" on={multiphase} set={setMultiphase} />
          <Pick
            label="Equipment"
            options={[
              ['gloves', 'gloves'],
              ['sleeves', 'sleeves'],
            ]}
            value={what}
            onPick={setWhat}
          />
          <Field label="Last electrical test" typed={tested} />
          <Field label="Day of use" typed={on} />
        </>
      }
      answers={[
        { label: 'Voltage to cover', value: cover === null ? null : volt(cover), note: 'Table I-4 note 1' },
        {
          label: 'Lowest class that covers it',
          value: cover === null ? null : needed === undefined ? 'none: no class covers it' : `class ${needed}`,
          note:
            needed === undefined
              ? undefined
              : `to ${volt(gloveRatings[needed].maxUse)}, tested at ${volt(gloveRatings[needed].retest)}`,
        },
        {
          label: 'Last test counts until',
          value: tested.value === null ? null : dueDate(tested.value, months),
          note: `${months} months; Table I-5`,
        },
        { label: 'On the day of use', value: inDate === null ? null : inDate ? 'in date' : 'not in date' },
      ]}
      warnings={inDate === false ? ['Out of date, or tested after the day of use: not to be worn.'] : []}
      table={
        <Table
          caption="Classes"
          heads={['Class', 'Highest use, AC', 'Test, AC', 'Bare rubber at the cuff, at least']}
          rows={gloveClasses.map((name) => [
            name,
            volt(gloveRatings[name].maxUse),
            volt(gloveRatings[name].retest),
            name === '00' ? 'no figure' : format(cuffGap[name], 'length', system, 2),
          ])}
        />
      }
      sources={[
        '29 CFR 1910.137 Tables I-4 and I-5, paragraph (c)(2): air test and look before each day of use, protectors over the gloves',
        'Cuff gap: MIL-HDBK-1025/10 Table 3, not in the rule',
      ]}
      leaves="Cuts, ozone, oil and wet insides, which no class covers; the rule’s exceptions for work without protectors."
    />
  );
};
