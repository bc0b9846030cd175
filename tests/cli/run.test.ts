/** The command line's shell: exit codes, and what goes to which stream. */
import { describe, expect, test } from 'vitest';
import { BadUse, type Register, readTextFile, writeJson } from '../../src/cli/io.ts';
import { run } from '../../src/cli/run.ts';
import { emptyFolder, write } from '../setup/tinyProject.ts';

const weigh: Register = (program, io) => {
  program
    .command('weigh <load>')
    .description('Weighs a load.')
    .option('--json', 'print JSON only')
    .action((load: string, options: { json?: boolean }) => {
      if (load === 'lost') throw new BadUse('lost.yaml: no such file');
      if (load === 'broken') throw new TypeError('the scale fell');
      if (load === 'heavy') io.checkFailed();
      if (options.json) writeJson(io, { load });
      else io.stdout(`${load}\n`);
    });
};

const outcome = async (...args: string[]): Promise<{ code: number; out: string; err: string }> => {
  let out = '';
  let err = '';
  const code = await run(args, [weigh], {
    stdout: (part) => {
      out += part;
    },
    stderr: (part) => {
      err += part;
    },
    readFile: readTextFile,
  });
  return { code, out, err };
};

describe('the exit code', () => {
  test('is 0 when all is well', async () => {
    expect(await outcome('weigh', 'light')).toEqual({ code: 0, out: 'light\n', err: '' });
  });

  test('is 0 for help, of the program and of a verb, on stdout', async () => {
    const program = await outcome('--help');
    expect(program).toMatchObject({ code: 0, err: '' });
    expect(program.out).toContain('weigh');
    const verb = await outcome('weigh', '--help');
    expect(verb).toMatchObject({ code: 0, err: '' });
    expect(verb.out).toContain('Weighs a load.');
  });

  test('is 1 when a check failed', async () => {
    expect((await outcome('weigh', 'heavy')).code).toBe(1);
  });

  test('is 2 for an unknown verb, which stderr names with the nearest', async () => {
    const { code, out, err } = await outcome('wiegh', 'light');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain("unknown command 'wiegh'");
    expect(err).toContain('Did you mean weigh?');
  });

  test('is 2 without a verb, with an unknown option, or with an argument missing', async () => {
    for (const args of [[], ['weigh', 'light', '--jsno'], ['weigh'], ['weigh', 'a', 'b']]) {
      const { code, out, err } = await outcome(...args);
      expect({ args, code, out }).toEqual({ args, code: 2, out: '' });
      expect(err).not.toBe('');
    }
  });

  test('is 2 for a bad file, with the message of the verb on stderr', async () => {
    expect(await outcome('weigh', 'lost')).toEqual({ code: 2, out: '', err: 'error: lost.yaml: no such file\n' });
  });

  test('is 70 for a defect, which is neither a failed check nor bad use', async () => {
    const { code, err } = await outcome('weigh', 'broken');
    expect(code).toBe(70);
    expect(err).toContain('the scale fell');
  });
});

test('--json leaves one JSON document on stdout', async () => {
  const { out } = await outcome('weigh', 'light', '--json');
  expect(JSON.parse(out)).toEqual({ load: 'light' });
});

describe('readTextFile', () => {
  test('reads UTF-8', () => {
    const folder = emptyFolder();
    write(folder, 'a.yaml', 'Ω');
    expect(readTextFile(`${folder}/a.yaml`)).toBe('Ω');
  });

  test('refuses what is missing, a folder, too long, or not UTF-8, and names the file', () => {
    const folder = emptyFolder();
    write(folder, 'long.yaml', '12345');
    write(folder, 'odd.yaml', Buffer.from([0x61, 0xff]));
    expect(() => readTextFile(`${folder}/none.yaml`)).toThrow(/none\.yaml: no such file/);
    expect(() => readTextFile(folder)).toThrow(/is a folder/);
    expect(() => readTextFile(`${folder}/long.yaml`, 4)).toThrow(/long\.yaml: 5 bytes, at most 4 are read/);
    expect(() => readTextFile(`${folder}/odd.yaml`)).toThrow(/odd\.yaml: is not UTF-8 text/);
  });
});
