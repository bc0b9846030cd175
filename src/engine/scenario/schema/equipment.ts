/** Equipment on poles, as written; its values are read once its kind is known. */
import { sides } from '../../catalogue/types.ts';
import type { ScenarioEquipment } from '../types.ts';
import { choice, defined, dotted, group, kind, nets, quantities, quantity, words } from './field.ts';

/** Values with their units still on. */
export type WrittenValues = Readonly<Record<string, string | number>>;

/** Equipment before its values are read. */
export type WrittenEquipment = Omit<ScenarioEquipment, 'values'> & { readonly values?: WrittenValues };

/** Side of a part: toward the road, the field, the source, the load, and so on. */
export const sideField = () =>
  choice(sides, {
    doc: 'Which side of the part: road, field, toward source or load, top, underside.',
    example: 'field',
  });

/** Equipment of the written form. */
export const equipmentSchema = group('A piece of equipment on a pole.', {
  id: dotted({ doc: 'The pole, a dot, and its name there.', example: 'p2.cutout' }),
  kind: kind('equipment', { doc: 'Kind of equipment, from the catalogue.', example: 'cutout' }),
  height: quantity('length', {
    doc: 'Mounting height above ground; where the framing puts it if left out.',
    example: '29 ft',
    from: '0 m',
    to: '30 m',
  }).optional(),
  side: sideField().optional(),
  nets: nets({
    doc: 'Net of each terminal, where it is not the ordinary one.',
    example: { top: 'p1.main', bottom: 'p1.tap' },
  }).optional(),
  state: words({
    doc: 'Position and the like, by the states of its kind.',
    example: { position: 'open', link: 'blown' },
    most: 40,
  }).optional(),
  values: quantities({ doc: 'Quantities of its kind, with their units.', example: { va: '25 kVA' } }).optional(),
  words: words({ doc: 'Words of its kind.', example: { link: '10K' }, most: 80 }).optional(),
}).transform(
  ({ height, ...part }): WrittenEquipment =>
    defined({ ...part, pole: part.id.slice(0, part.id.indexOf('.')), heightM: height }),
);
