/** Nothing that was done is lost: closed tab, full disk, foreign files, other scenarios. */
import { describe, expect, test } from 'vitest';
import { libraryFrom } from '../../src/app/library.ts';
import { fullStore, makeDesk, memoryStore } from './makeDesk.ts';
import { quarryRoad } from './quarryRoad.ts';

const logFile = (text: string, name = 'log.json'): File => new File([text], name, { type: 'application/json' });

describe('the library', () => {
  test('holds the scenario files that parse and names the problems of those that do not', () => {
    expect(quarryRoad.problems).toEqual([]);
    const { offered, problems } = libraryFrom({ 'scenarios/bad.yaml': 'format: 2\n' });
    expect(offered).toEqual([]);
    expect(problems[0]).toMatch(/^bad\.yaml:1:/);
  });
});

describe('the desk', () => {
  test('keeps the log after each act, so that another page goes on where the first one stopped', () => {
    const store = memoryStore();
    const first = makeDesk(quarryRoad, store);
    first.take().send({ act: 'acknowledge' });
    first.playing().send({ act: 'park', at: 'clear' });
    const second = makeDesk(quarryRoad, store);
    expect(second.desk.keptDrill.value).toMatchObject({ title: 'Fog on Quarry Road', acts: 2, ended: false });
    second.desk.goOn();
    expect(second.playing().snapshot.value.log).toEqual(first.playing().snapshot.value.log);
    expect(second.playing().snapshot.value.journal).toEqual(first.playing().snapshot.value.journal);
  });

  test('says once that a full disk keeps nothing, and plays on', () => {
    const { desk, take } = makeDesk(quarryRoad, fullStore());
    const playing = take();
    playing.send({ act: 'acknowledge' });
    expect(desk.problem.value).toContain('quota exceeded');
    desk.problem.value = null;
    playing.send({ act: 'park', at: 'clear' });
    expect(desk.problem.value).toBeNull();
    expect(playing.snapshot.value.log.entries).toHaveLength(2);
  });

  test('plays without any store and still hands the log out as a file', () => {
    const { desk, files, take } = makeDesk(quarryRoad, null);
    take().send({ act: 'acknowledge' });
    desk.saveLog();
    expect(files[0]?.name).toBe('loose-tie-quarry-road-fog-1-acts.json');
    expect(JSON.parse(files[0]?.text ?? '')).toMatchObject({ format: 'loose-tie-log', seed: 7 });
  });

  test('opens a log that it handed out itself', async () => {
    const first = makeDesk(quarryRoad);
    first.take().send({ act: 'acknowledge' });
    first.desk.saveLog();
    const second = makeDesk(quarryRoad);
    await second.desk.openLog(logFile(first.files[0]?.text ?? ''));
    expect(second.desk.problem.value).toBeNull();
    expect(second.playing().snapshot.value.stage).toBe('survey');
  });

  test.each([
    ['no JSON', '{', 'no JSON'],
    ['another form', '{"format":"x"}', 'is no log of a drill'],
  ])('says what is wrong with a file of %s and leaves the screen as it was', async (_what, text, words) => {
    const { desk } = makeDesk(quarryRoad);
    await desk.openLog(logFile(text));
    expect(desk.problem.value).toContain(words);
    expect(desk.playing.value).toBeNull();
  });

  test('says so when a log belongs to another scenario or was changed', async () => {
    const { desk, files, take } = makeDesk(quarryRoad);
    take().send({ act: 'acknowledge' });
    desk.saveLog();
    desk.leave();
    const log = JSON.parse(files[0]?.text ?? '');
    await desk.openLog(logFile(JSON.stringify({ ...log, scenarioHash: 'a'.repeat(64) })));
    expect(desk.problem.value).toContain('another scenario');
    await desk.openLog(logFile(JSON.stringify({ ...log, entries: [{ ...log.entries[0], minute: 3 }] })));
    expect(desk.problem.value).toContain('cannot be played again');
    expect(desk.playing.value).toBeNull();
  });

  test('opening the log of another drill leaves the running one where it is', async () => {
    const other = makeDesk(quarryRoad);
    other.take().send({ act: 'acknowledge' });
    other.playing().send({ act: 'hand-over' });
    other.desk.saveLog();
    const store = memoryStore();
    const { desk, take } = makeDesk(quarryRoad, store);
    take().send({ act: 'acknowledge' });
    desk.leave();
    await desk.openLog(logFile(other.files[0]?.text ?? ''));
    expect(desk.playing.value?.snapshot.value.stage).toBe('debrief');
    expect(makeDesk(quarryRoad, store).desk.keptDrill.value).toMatchObject({ acts: 1, ended: false });
  });

  test('knows a drill that has ended from one that runs, however it ended', () => {
    const store = memoryStore();
    const { take } = makeDesk(quarryRoad, store);
    const playing = take();
    playing.send({ act: 'acknowledge' });
    playing.send({ act: 'hand-over' });
    expect(makeDesk(quarryRoad, store).desk.keptDrill.value).toMatchObject({ acts: 2, ended: true });
  });

  test('puts a kept drill away for good when told', () => {
    const store = memoryStore();
    makeDesk(quarryRoad, store).take().send({ act: 'acknowledge' });
    makeDesk(quarryRoad, store).desk.forget();
    expect(makeDesk(quarryRoad, store).desk.keptDrill.value).toBeNull();
  });

  test('says once that a drill in another tab takes the place of this one on the device', () => {
    const store = memoryStore();
    const here = makeDesk(quarryRoad, store);
    const there = makeDesk(quarryRoad, store);
    here.take().send({ act: 'acknowledge' });
    there.take().send({ act: 'acknowledge' });
    here.otherTabActed();
    expect(here.desk.problem.value).toContain('another tab');
    here.desk.problem.value = null;
    here.otherTabActed();
    expect(here.desk.problem.value).toBeNull();
    here.playing().send({ act: 'park', at: 'clear' });
    here.otherTabActed();
    expect(here.desk.problem.value).toContain('another tab');
  });

  test('shows on the start sheet what another tab has kept', () => {
    const store = memoryStore();
    const here = makeDesk(quarryRoad, store);
    const there = makeDesk(quarryRoad, store);
    there.take().send({ act: 'acknowledge' });
    expect(here.desk.keptDrill.value).toBeNull();
    here.otherTabActed();
    expect(here.desk.keptDrill.value).toMatchObject({ acts: 1, ended: false });
  });

  test('keeps settings between visits and mends torn ones', () => {
    const store = memoryStore();
    const { desk } = makeDesk(quarryRoad, store);
    desk.settings.value = { ...desk.settings.value, units: 'metric', brightness: 1.5 };
    expect(makeDesk(quarryRoad, store).desk.settings.value).toMatchObject({ units: 'metric', brightness: 1.5 });
    store.texts.set('loose-tie.settings', '{"units":"cubits","brightness":40,"sound":');
    expect(makeDesk(quarryRoad, store).desk.settings.value).toMatchObject({ units: 'us', brightness: 1, sound: true });
  });
});
