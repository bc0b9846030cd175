import type { Reporter, TestModule } from 'vitest/node';

/** Ends the run with one plain line: "Tests: N passed, N failed, N skipped". */
export default class PlainReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    let passed = 0;
    let failed = unhandled.length;
    let skipped = 0;
    for (const module of modules) {
      if (module.state() === 'failed' && module.errors().length > 0) failed += 1;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') passed += 1;
        else if (state === 'failed') failed += 1;
        else skipped += 1;
      }
    }
    process.stdout.write(`\nTests: ${passed} passed, ${failed} failed, ${skipped} skipped\n`);
  }
}
