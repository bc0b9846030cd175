import { describe, expect, it } from 'vitest';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import {
  faultsOf,
  findPart,
  partById,
  personById,
  splitPoint,
  toolById,
  trainee,
  withoutFault,
  withPart,
  withPerson,
  withTool,
} from '../../../src/engine/world/edit.ts';
import { start } from '../acts/scene.ts';

const world = start();

describe('copies with one thing changed', () => {
  it('leave everything else the same object', () => {
    const changed = withPart(world, 'p2.tie', { tags: ['x'] });
    expect(changed).not.toBe(world);
    expect(changed.parts.filter((part, i) => part !== world.parts[i]).map(({ id }) => id)).toEqual(['p2.tie']);
    expect(changed.tools).toBe(world.tools);
    const wet = withTool(world, 'stick-1', { wet: false });
    expect(toolById(wet, 'stick-1')?.wet).toBe(false);
    expect(wet.parts).toBe(world.parts);
    expect(personById(withPerson(world, 'trainee', { at: 'p2.road' }), 'trainee')?.at).toBe('p2.road');
  });
});

describe('without a fault', () => {
  it.each(faultsOf(world).map(({ on, fault }) => [fault.id, on] as const))('%s, only %s is another', (id, on) => {
    const cleared = withoutFault(world, id);
    expect(faultsOf(cleared).map(({ fault }) => fault.id)).toEqual(
      faultsOf(world)
        .map(({ fault }) => fault.id)
        .filter((each) => each !== id),
    );
    const others = [...cleared.parts, ...cleared.tools].filter(
      (each, i) => each !== [...world.parts, ...world.tools][i],
    );
    expect(others.map((each) => each.id)).toEqual([on]);
  });

  it('a part stands as its kind ordinarily does', () => {
    expect(partById(world, 'a.cord').state.position).toBe('plugged');
    expect(partById(withoutFault(world, 'cord'), 'a.cord').state.position).toBe(
      componentKind('panel-cord').states.position?.[0],
    );
  });

  it('a state that somebody has changed since is left as it is', () => {
    const unplugged = withPart(world, 'a.cord', { state: { position: 'tripped' } });
    expect(partById(withoutFault(unplugged, 'cord'), 'a.cord').state.position).toBe('tripped');
  });

  it('that was never laid, nothing changes', () => {
    expect(withoutFault(world, 'nothing')).toEqual(world);
  });
});

it('what is not there is null where one may ask and an error where it must be there', () => {
  expect(findPart(world, 'nobody')).toBeNull();
  expect(() => partById(world, 'nobody')).toThrow('nobody');
  expect(trainee(world).id).toBe('trainee');
  expect(() => trainee({ ...world, people: [] })).toThrow('trainee');
  expect(splitPoint('p2.cutout/top')).toEqual(['p2.cutout', 'top']);
  expect(splitPoint('top')).toBeNull();
});
