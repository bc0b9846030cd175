/**
 * Federal work rules that a drill is judged by, each in one sentence of our own. 29 CFR 1910.269 (text as amended through
 * 85 FR 8732, Feb. 18, 2020; paragraphs (a) to (j) through 81 FR 83006, Nov. 18, 2016), 1910.137, 1910.333. Later amendments
 * were not checked. State plans, local codes and the employer's own rules may ask for more, and then they govern. Left
 * out: paragraphs that no drill here can meet.
 */

/** One rule: where it stands and what it asks. */
export interface Rule {
  readonly id: string;
  readonly paragraph: string;
  readonly text: string;
}

/** The five subjects that every job briefing covers: 1910.269(c)(2). */
export const briefingSubjects = [
  'hazards',
  'work-procedures',
  'special-precautions',
  'energy-source-controls',
  'protective-equipment',
] as const;

/** A required briefing subject. */
export type BriefingSubject = (typeof briefingSubjects)[number];

/** Steps that make a line deenergized, in their order: 1910.269(m)(3). */
export const deenergizingOrder = [
  'request',
  'open-and-tag',
  'tag-automatic-controls',
  'prohibiting-tags',
  'clearance-and-test',
  'ground',
  'deenergized',
] as const;

/** Steps that release a clearance, in their order: 1910.269(m)(3)(x). */
export const releaseOrder = ['notify-crew', 'all-clear', 'grounds-off', 'report'] as const;

/** Voltage above which a line over it asks for two workers, a live-line ground clamp and a proved tester. */
export const sixHundredVolts = 600;

const rule = (id: string, paragraph: string, text: string): Rule => ({ id, paragraph: `29 CFR ${paragraph}`, text });

/** Rules by topic; ids are stable. */
export const rules: readonly Rule[] = [
  // Before work
  rule(
    'conditions-first',
    '1910.269(a)(4)',
    'Voltages, sources, grounds, pole condition and surroundings are found out before work starts.',
  ),
  rule('briefing', '1910.269(c)(1)', 'The employee in charge holds a briefing with those involved before each job.'),
  rule(
    'briefing-subjects',
    '1910.269(c)(2)',
    'A briefing covers hazards, procedures, special precautions, energy-source controls and protective equipment.',
  ),
  rule('briefing-again', '1910.269(c)(3)', 'Another briefing is held when a change in the work could affect safety.'),
  rule('briefing-alone', '1910.269(c)(5)', 'Somebody working alone plans the job as if a briefing were required.'),
  rule(
    'qualified-only',
    '1910.269(l)(1)(i)',
    'Only qualified employees work on or near exposed parts of 50 V or more.',
  ),
  rule(
    'energized-until-proved',
    '1910.269(l)(1)(iii)',
    'Lines and equipment count as energized until they have been deenergized by the procedure.',
  ),
  rule(
    'two-workers',
    '1910.269(l)(2)(i)',
    'At least two employees are present for work on, or exposed to, lines and equipment above 600 V.',
  ),
  rule(
    'two-workers-exceptions',
    '1910.269(l)(2)(ii)',
    'One employee may do routine switching, live-line tool work out of reach of energized parts, and emergency repairs that safeguard the public.',
  ),
  // Energized parts
  rule(
    'approach-distance',
    '1910.269(l)(3)(iii)',
    'Nobody comes or brings a conductive object inside the minimum approach distance without insulation rated for it.',
  ),
  rule(
    'sleeves',
    '1910.269(l)(4)(i)',
    'Rubber sleeves go with rubber gloves unless other energized parts are covered.',
  ),
  rule(
    'work-position',
    '1910.269(l)(5)(i)',
    'The work position is one from which a slip or shock does not end on an exposed part.',
  ),
  rule(
    'connect-order',
    '1910.269(l)(6)',
    'A connection is made at the dead part first, and a disconnection begins at the source.',
  ),
  rule(
    'fuse-handling',
    '1910.269(l)(9)',
    'Fuses above 300 V are handled with rated tools or gloves; expulsion fuses also with eye protection and clear of the exhaust.',
  ),
  rule('covered-is-bare', '1910.269(l)(10)', 'Covered wire that is not insulated counts as bare.'),
  rule(
    'cases-energized',
    '1910.269(l)(11)',
    'A transformer case counts as energized unless it is seen to be grounded.',
  ),
  rule(
    'load-break',
    '1910.269(l)(12)',
    'A device used to open or close a circuit is rated for the current it will see.',
  ),
  rule(
    'arc-clothing',
    '1910.269(l)(8)(v)',
    'Above an estimate of 2 cal/cm2 the clothing has at least that arc rating.',
  ),
  // Deenergizing, testing, grounding
  rule('clearance', '1910.269(m)(2)', 'One employee in charge holds the clearance for the lines worked on.'),
  rule(
    'public-disconnects',
    '1910.269(m)(2)(v)',
    'A disconnect that the public can reach is made inoperable while it is open.',
  ),
  rule(
    'deenergize-order',
    '1910.269(m)(3)',
    'Request, open and tag every known source, tag automatic controls, get clearance, test, ground; only then is the line deenergized.',
  ),
  rule(
    'release-order',
    '1910.269(m)(3)(x)',
    'A clearance is released after the crew is told, all are clear, grounds are off, and the operator is told.',
  ),
  rule(
    'reenergize',
    '1910.269(m)(3)(xiii)',
    'A line is made live only with grounds off, crews released, people clear and tags off.',
  ),
  rule(
    'prove-tester',
    '1910.333(b)(2)(iv)(B)',
    'Above 600 V the tester is proved right before and right after the test, which also looks for induced voltage and backfeed.',
  ),
  rule(
    'backfeed',
    '1910.269(w)(7)',
    'Where backfeed is possible, work is done by the energized rules, or after deenergizing and grounding.',
  ),
  rule(
    'ground-to-work-dead',
    '1910.269(n)(2)',
    'Work as deenergized needs protective grounds unless they are impracticable and no source or induction can reach the line.',
  ),
  rule(
    'equipotential',
    '1910.269(n)(3)',
    'Grounds are placed so that no employee meets a hazardous difference of potential.',
  ),
  rule(
    'ground-size',
    '1910.269(n)(4)',
    'Grounds carry the fault current for the clearing time and are at least #2 AWG copper.',
  ),
  rule('test-before-ground', '1910.269(n)(5)', 'The absence of nominal voltage is tested before a ground is placed.'),
  rule(
    'ground-order',
    '1910.269(n)(6)(i)',
    'The ground end is connected first, then the line end with a live-line tool.',
  ),
  rule(
    'unground-order',
    '1910.269(n)(6)(ii)',
    'The line end is taken off first with a live-line tool, the ground end last.',
  ),
  rule('capacitor-wait', '1910.269(w)(1)', 'Capacitors wait five minutes after disconnection before they are shorted.'),
  // Tools and protective equipment
  rule('wipe-stick', '1910.269(j)(2)(i)', 'A live-line tool is wiped clean and looked over before use each day.'),
  rule(
    'withdraw-stick',
    '1910.269(j)(2)(ii)',
    'A live-line tool with a defect or contamination left after wiping is withdrawn and tested.',
  ),
  rule(
    'stick-interval',
    '1910.269(j)(2)(iii)',
    'A live-line tool is withdrawn for examination and test every two years.',
  ),
  rule(
    'glove-check',
    '1910.137(c)(2)(ii)',
    'Insulating equipment is inspected before each day of use, gloves with an air test.',
  ),
  rule('glove-interval', '1910.137(c)(2)(viii)', 'Gloves are tested every six months.'),
  rule('glove-protectors', '1910.137(c)(2)(vii)', 'Protector gloves are worn over insulating gloves.'),
  // Poles, heights, vehicles, public
  rule(
    'pole-check',
    '1910.269(q)(1)(i)',
    'Before climbing or changing loads the structure is found able to carry them, or it is braced.',
  ),
  rule(
    'fall-protection',
    '1910.269(g)(2)(iv)(C)',
    'Above 4 ft on a pole fall arrest, work positioning or restraint is used; in an aerial lift restraint or fall arrest.',
  ),
  rule(
    'equipment-distance',
    '1910.269(p)(4)',
    'Mechanical equipment keeps the minimum approach distance, with an observer where the operator cannot judge it.',
  ),
  rule('outriggers', '1910.269(p)(2)', 'Outriggers are extended and firmly set where there are any.'),
  rule('traffic', '1910.269(w)(6)', 'Signs, cones and barricades stand before work near traffic begins.'),
  rule('light', '1910.269(w)(4)', 'There is light enough to work safely.'),
  rule(
    'unqualified-distance',
    '1910.333(c)(3)(i)',
    'People who are not qualified stay 10 ft from overhead lines up to 50 kV, 4 in more for each 10 kV above.',
  ),
];

/** The rule of an id; undefined if unknown. */
export const ruleById = (id: string): Rule | undefined => rules.find((entry) => entry.id === id);
