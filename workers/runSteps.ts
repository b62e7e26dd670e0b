/**
 * Runs work that goes step by step to its end.
 * @param onStep  called after every step; its promise is awaited, so a worker that is ended stops between steps
 */
export async function runSteps<Step, Value>(
  steps: Generator<Step, Value>,
  onStep: (step: Step) => Promise<void>,
): Promise<Value> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    await onStep(step.value);
  }
}
