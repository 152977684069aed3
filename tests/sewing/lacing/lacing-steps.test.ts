import { describe, expect, test } from 'vitest';
import { mm } from '../../../src/lengths/length.ts';
import { readSteps, type StepFault } from '../../../src/sewing/lacing/lacing-steps.ts';

const read = (typed: string) => readSteps(typed, mm(5));
const faults = (typed: string) => {
  const outcome = read(typed);
  return outcome.ok ? [] : outcome.faults;
};

describe('steps as written', () => {
  test('lines or semicolons, long or short faces, comma or point, fractions', () => {
    const long = read('0 1 front; 0.5 -0.4 front; 0.5 -0.4 back; 1 1 back; 1 1 front');
    expect(long).toMatchObject({ ok: true, repeat: { advance: 1 }, offHoles: [] });
    expect(read(' 0 1 F\n1/2  −0,4 f;1/2 -0,4 b\n\n 1 1 b;1 1 f; ')).toEqual(long);
    if (!long.ok) throw new Error('not read');
    expect(long.repeat.points.map(({ along, across, face }) => [along, across, face])).toEqual([
      [0, mm(5), 'front'],
      [0.5, mm(-2), 'front'],
      [0.5, mm(-2), 'back'],
      [1, mm(5), 'back'],
    ]);
  });

  test('it may begin at any hole, and on either side of it', () => {
    for (const from of [
      '3 1 f; 4 1 f; 4 1 b; 5 1 b; 5 1 f',
      '-1 1 f; 0 1 f; 0 1 b; 1 1 b; 1 1 f',
    ]) {
      expect(read(from)).toEqual(read('0 1 f; 1 1 f; 1 1 b; 2 1 b; 2 1 f'));
    }
    expect(read('0 1 b; 0 1 f; 1 1 f; 1 1 b; 2 1 b')).toMatchObject({
      repeat: { advance: 2, points: [{ along: 0, face: 'front' }, {}, {}, { along: 2 }] },
    });
  });

  test('as many steps and as far as is kept in mind', () => {
    const kinds = (typed: string) => faults(typed).map(({ kind }) => kind);
    expect(kinds(Array.from({ length: 40 }, (_, i) => `${i % 20} 1 f`).join(';'))).not.toContain(
      'too-many-steps',
    );
    expect(read('0 1 f; 20 1 f; 20 1 b; 1 1 b; 1 1 f').ok).toBe(true);
  });

  test('a turn at the last step is one at each start of the next repeat', () => {
    expect(read('0 1 b; 0 0 b; 0 0 f; 1 0 f; 1 1 f; 1 1 b turn')).toMatchObject({
      repeat: { points: [{ turns: 1 }, { turns: 0 }, {}, {}, {}] },
    });
  });

  test('steps through the strip where the row has no hole are told', () => {
    expect(read('0 1 f; 0.5 2 f; 0.5 2 b; 1 1 b; 1 1 f')).toMatchObject({ offHoles: [3] });
    // Round the edge it needs no hole.
    expect(read('0 1 f; 0.5 0 f; 0.5 0 b; 1 1 b; 1 1 f')).toMatchObject({ offHoles: [] });
  });
});

describe('no repeat, and at which step', () => {
  const CASES: [string, string, StepFault[]][] = [
    ['nothing', ' ; \n', [{ kind: 'empty' }]],
    ['one step', '0 1 f', [{ kind: 'one-step' }]],
    [
      'words and numbers that are none',
      '0 1 f; left 1 f; 1 1; 1 1 side; 1 1 f twice; 1 1 f turn turn',
      [
        { kind: 'unreadable', step: 2, text: 'left 1 f' },
        { kind: 'unreadable', step: 3, text: '1 1' },
        { kind: 'unreadable', step: 4, text: '1 1 side' },
        { kind: 'unreadable', step: 5, text: '1 1 f twice' },
        { kind: 'unreadable', step: 6, text: '1 1 f turn turn' },
      ],
    ],
    [
      'a step that goes nowhere',
      '0 1 f; 0 1 f; 1 1 f; 1 1 b; 2 1 b; 2 1 f',
      [{ kind: 'nowhere', step: 2 }],
    ],
    ['place and face at once', '0 1 f; 1 1 b; 1 1 f', [{ kind: 'both', step: 2 }]],
    [
      'too far along',
      '0 1 f; 20.5 1 f; 20.5 1 b; 1 1 b; 1 1 f',
      [
        { kind: 'too-far', step: 2, most: 20 },
        { kind: 'too-far', step: 3, most: 20 },
      ],
    ],
    [
      'too far across',
      '0 1 f; 0 -21 f; 1 1 f; 1 1 b; 2 1 b; 2 1 f',
      [{ kind: 'too-far', step: 2, most: 20 }],
    ],
    [
      'not begun in a hole',
      '0.5 1 f; 1.5 1 f; 1.5 1 b; 2.5 1 b; 2.5 1 f',
      [{ kind: 'not-in-hole' }],
    ],
    ['not begun in a hole, nor ever through', '0.5 1 f; 1.5 1 f', [{ kind: 'not-in-hole' }]],
    ['not begun in the row', '0 0 f; 0 0 b; 1 0 b; 1 0 f', [{ kind: 'not-in-hole' }]],
    ['another place at the end', '0 1 f; 1 0 f; 1 0 b', [{ kind: 'not-again', step: 3 }]],
    ['the edge at the end', '0 1 f; 1 0 f; 1 0 b; 2 0 b; 2 0 f', [{ kind: 'not-again', step: 5 }]],
    [
      'from the row to the other face’s edge',
      '0 1 f; 0 0 b; 1 1 b; 1 1 f',
      [{ kind: 'both', step: 2 }],
    ],
    ['another face at the end', '0 1 f; 1 1 f; 1 1 b', [{ kind: 'not-again', step: 3 }]],
    ['back where it began', '0 1 f; 1 1 f; 1 1 b; 0 1 b; 0 1 f', [{ kind: 'no-advance', step: 5 }]],
    ['backwards', '0 1 f; -1 1 f; -1 1 b; -2 1 b; -2 1 f', [{ kind: 'no-advance', step: 5 }]],
    [
      'one and a half on',
      '0 1 f; 1 0 f; 1 0 b; 1.5 1 b; 1.5 1 f',
      [{ kind: 'no-advance', step: 5 }],
    ],
    ['half a pitch on', '0 1 f; 1 0 f; 1 0 b; 0.5 1 b; 0.5 1 f', [{ kind: 'no-advance', step: 5 }]],
    ['never through', '0 1 f; 1 1 f', [{ kind: 'no-pass' }]],
    [
      'more steps than are kept in mind',
      Array.from({ length: 41 }, (_, i) => `${i} 1 f`).join(';'),
      [{ kind: 'too-many-steps', steps: 41, most: 40 }],
    ],
  ];
  test.each(CASES)('%s', (_, typed, expected) => {
    expect(faults(typed)).toEqual(expected);
  });
});
