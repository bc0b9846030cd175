/** The command line's runner of ngspice, for tests that compare with it. */
export { type NgspiceAnswer, runNgspice } from '../../src/cli/oracle/ngspice.ts';
