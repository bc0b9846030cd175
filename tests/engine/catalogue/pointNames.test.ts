/** What the bare ends of things are called. */
import { describe, expect, test } from 'vitest';
import { componentKinds } from '../../../src/engine/catalogue/components.ts';
import { pointName } from '../../../src/engine/catalogue/pointNames.ts';

const bare = componentKinds.flatMap(({ id, points }) => Object.keys(points).map((terminal) => [id, terminal] as const));

describe('the name of a bare end', () => {
  test.each(bare)('%s %s is words of the trade, not a net’s short name', (kind, terminal) => {
    expect(pointName(kind, terminal)).toMatch(/^(tank|head|clamp|pin|neutral|[a-z-]+ [a-zX0-9 ]+)$/);
    expect(pointName(kind, terminal)).not.toMatch(/^[a-z]\d$/);
  });

  test.each(componentKinds.map(({ id, points }) => [id, Object.keys(points)] as const))(
    'tells the ends of a %s apart',
    (kind, terminals) => {
      expect(new Set(terminals.map((terminal) => pointName(kind, terminal))).size).toBe(terminals.length);
    },
  );
});
