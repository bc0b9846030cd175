/** What the trainee knows of a tool: its tag, once read, and what was called on it. */
import { format, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { toolById } from '../../engine/world/edit.ts';
import type { World } from '../../engine/world/types.ts';
import type { Desk } from '../types.ts';
import { conditionLabel } from '../words.ts';

const tagOf = (world: World, id: string, units: UnitSystem): string | null => {
  const tool = toolById(world, id);
  if (!tool || tool.checks['read-tag'] === undefined) return null;
  const rated = tool.ratedVolts === null ? '' : `rated ${format(tool.ratedVolts, 'voltage', units)}`;
  return [tool.tested === null ? 'no test date' : `tested ${tool.tested}`, rated].filter(Boolean).join(', ');
};

export const ToolNotes = ({ desk, world, tool }: { desk: Desk; world: World; tool: string }) => {
  const tag = tagOf(world, tool, desk.settings.value.units);
  const called = world.paper.findings.filter(({ on }) => on === tool);
  return (
    <>
      {tag !== null && <span class="tag">{tag}</span>}
      {called.map(({ id, condition }) => (
        <span key={id} class="tag">
          called: {conditionLabel(condition)}
        </span>
      ))}
    </>
  );
};
