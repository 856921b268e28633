// Runs the steps of `npm test` one after the other and remembers how each ended.

/**
 * @returns `{ step, report }`. `step(name, run, { needs })` runs `run()`, which resolves with a remark to print or throws
 * an Error that says what to do; it is passed over when a step it needs did not end well. `report()` gives all of them.
 */
export function makeSteps(say = console.log) {
  const ended = [];
  const endedWell = (name) => ended.find((step) => step.name === name)?.state === 'done';

  async function step(name, run, { needs = [] } = {}) {
    const lacking = needs.filter((need) => !endedWell(need));
    if (lacking.length > 0) {
      ended.push({ name, state: 'passed over', seconds: 0 });
      return say(`\n== ${name}: passed over, for "${lacking[0]}" did not end well`);
    }
    say(`\n== ${name}`);
    const began = performance.now();
    let state = 'done';
    try {
      const remark = await run();
      if (remark) say(remark);
    } catch (error) {
      state = 'failed';
      say(error.message);
    }
    const seconds = (performance.now() - began) / 1000;
    ended.push({ name, state, seconds });
    say(`-- ${name}: ${state} after ${seconds.toFixed(1)} s`);
  }

  return { step, report: () => ended };
}
