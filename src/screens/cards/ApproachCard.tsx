/** Minimum approach distance by the rule's tables, with altitude. */
import { useState } from 'preact/hooks';
import {
  type ApproachExposure,
  electricalComponent,
  minimumApproach,
  unqualifiedApproach,
} from '../../engine/standards/approachDistance.ts';
import { format, formatNumber, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { Card, Table } from './Card.tsx';
import { distanceBoth, Field, lengthBoth, Pick, useQuantity } from './fields.tsx';

const shown = [300, 750, 5000, 15000, 36000, 46000, 72500, 121000, 145000];

export const distanceWords = (
  volts: number,
  exposure: ApproachExposure,
  altitude: number,
  system: UnitSystem,
): string => {
  const { metres, avoidContact } = minimumApproach(volts, exposure, altitude);
  if (metres > 0) return distanceBoth(metres, system);
  return avoidContact ? 'no distance; avoid contact' : 'not in the table';
};

export const ApproachCard = ({ system }: { system: UnitSystem }) => {
  const volts = useQuantity('12.47 kV', 'voltage', system, {
    least: 50,
    most: 800000,
    because: 'Tables R-6 and R-7 go from 50 V to 800 kV',
  });
  const altitude = useQuantity(system === 'us' ? '820 ft' : '250 m', 'length', system, {
    least: 0,
    most: 6000,
    because: 'Table R-5 ends there',
  });
  const [exposure, setExposure] = useState<ApproachExposure>('phase-to-ground');
  const both = volts.value !== null && altitude.value !== null ? { v: volts.value, h: altitude.value } : null;
  const answer = both && minimumApproach(both.v, exposure, both.h);
  const part = volts.value === null ? undefined : electricalComponent(volts.value, exposure);
  return (
    <Card
      title="Minimum approach distance"
      says="How near the body of a qualified worker, or anything conductive in the hand, may come to a live part without the rated protection."
      fields={
        <>
          <Field label="System voltage, phase to phase" typed={volts} hint="12.47 kV for a 12.47Y/7.2 system" />
          <Pick
            label="Exposure"
            options={[
              ['phase-to-ground', 'phase to ground'],
              ['phase-to-phase', 'phase to phase'],
            ]}
            value={exposure}
            onPick={setExposure}
          />
          <Field label="Altitude" typed={altitude} />
        </>
      }
      answers={[
        {
          label: 'Keep at least',
          value: both && distanceWords(both.v, exposure, both.h, system),
          note: answer?.source,
        },
        {
          label: 'Altitude factor',
          value: answer ? formatNumber(answer.altitudeFactor) : null,
          note: 'Table R-5; 1 to 900 m',
        },
        {
          label: 'Of that, electrical part by equation',
          value:
            volts.value === null ? null : part === undefined ? 'only for 5.1 to 72.5 kV' : lengthBoth(part, system),
          note: 'Appendix B, III.B, not rounded; the rest is for movement one did not mean to make',
        },
        {
          label: 'Anybody not qualified',
          value: volts.value === null ? null : lengthBoth(unqualifiedApproach(volts.value / Math.sqrt(3)), system),
          note: '29 CFR 1910.333(c)(3)(i)',
        },
      ]}
      table={
        <Table
          caption={`The table${altitude.value === null ? '' : ` at ${format(altitude.value, 'length', system)}`}`}
          heads={['Up to, phase to phase', 'Phase to ground', 'Phase to phase']}
          rows={shown.map((v) => [
            format(v, 'voltage', system, 4),
            distanceWords(v, 'phase-to-ground', altitude.value ?? 0, system),
            distanceWords(v, 'phase-to-phase', altitude.value ?? 0, system),
          ])}
        />
      }
      sources={[
        '29 CFR 1910.269 Tables R-5, R-6, R-7 and Appendix B, as amended through 85 FR 8732 (Feb. 18, 2020); distances rounded up, as there',
      ]}
      leaves="An employer’s own calculated distances, which then govern; transient overvoltages above the default; single-phase systems to 750 V are entered with their voltage to ground (footnote 2)."
    />
  );
};
