/** Ends a test run with one plain line that any reader of logs can parse. */
import type { Reporter, TestModule } from 'vitest/node';

const failedHooks = (module: TestModule): number =>
  [...module.children.allSuites()].filter((suite) => suite.errors().length > 0).length;

/** Prints "Tests: N passed, N failed, N skipped"; a file or hook that throws counts as one failed. */
export default class PlainReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    let passed = 0;
    let failed = unhandled.length;
    let skipped = 0;
    for (const module of modules) {
      if (module.errors().length > 0) failed += 1;
      failed += failedHooks(module);
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
