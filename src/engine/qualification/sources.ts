/** Documents that checks name, each with the edition that was read. */
export const sources = {
  rule269: '29 CFR 1910.269 (as amended through 85 FR 8732, Feb. 18, 2020)',
  rule137: '29 CFR 1910.137',
  rule333: '29 CFR 1910.333',
  iec479: 'IEC 479-1:1994, Table 1, as reproduced in public notes',
  dalziel:
    'Dalziel and Lee, Reevaluation of lethal electric currents, IEEE Trans. Ind. Gen. Appl. 4(5), 1968, abstract',
  ieee80: 'IEEE Std 80-2013, Annex B example as quoted in public test suites',
  mil419: 'MIL-HDBK-419A vol. I, 2.8.1',
  mil1025: 'MIL-HDBK-1025/10, Table 3',
  f855: 'ASTM F855 Table 1, as reproduced in Encyclopedia of Grounding (CA09040E), page 38',
  f855h: 'ASTM F855, high-asymmetry (H) ratings, as reproduced in Encyclopedia of Grounding (CA09040E), page 38',
  ieee80Tables: 'IEEE Std 80-2000, Tables 3 and 4 (page image text)',
  handbook: 'Encyclopedia of Grounding (CA09040E), page 61, worksite remote from grounds',
  opendss: 'OpenDSS, default TCC_Curve objects (klink, tlink, a, d, uv1547, ov1547)',
  opendssRecloser: 'OpenDSS manual, Recloser object, defaults of Shots and RecloseIntervals',
  kersting111:
    'Kersting, Distribution System Modeling and Analysis, Example 11.1, as asserted in GridLAB-D test_center_tapped_basic.glm',
  kersting41: 'Kersting, Distribution System Modeling and Analysis, Example 4.1; GridLAB-D powerflow_IEEE_4node.glm',
  ieee4: 'IEEE PES 4-node test feeder, results as tabulated in modelica-buildings Validation/IEEETests',
  ngspice: 'ngspice 39.3 and a hand-written nodal program, project check values',
  memory: 'from memory',
} as const;
