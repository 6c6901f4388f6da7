"use client";

import { type Item, planItem } from "./form-state";

export type PlanChoice = { readonly id: string; readonly title: string };

type Props = {
  readonly plans: readonly PlanChoice[];
  readonly items: readonly Item[];
  readonly onPut: (item: Item) => void;
  readonly onTakeOut: (key: string) => void;
};

/** Plans of the teacher's own library. The server has their text, and takes it as it is when the homework is set. */
export function ChoosePlans({ plans, items, onPut, onTakeOut }: Props) {
  if (plans.length === 0) return null;
  const isIn = (plan: PlanChoice) => items.some(({ key }) => key === planItem(plan).key);
  const chosen = plans.filter(isIn).length;
  return (
    <fieldset>
      <legend>Plans of your library</legend>
      <details open={chosen > 0}>
        <summary>
          {plans.length === 1 ? "1 plan" : `${plans.length} plans`}
          {chosen > 0 && `, ${chosen} chosen`}
        </summary>
        <div className="homework-choices">
          {plans.map((plan) => (
            <label key={plan.id}>
              <input
                type="checkbox"
                checked={isIn(plan)}
                onChange={() => (isIn(plan) ? onTakeOut(planItem(plan).key) : onPut(planItem(plan)))}
              />
              {plan.title}
            </label>
          ))}
        </div>
      </details>
    </fieldset>
  );
}
