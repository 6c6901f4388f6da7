import { type ComponentPropsWithRef, useId } from "react";

type Props = Omit<ComponentPropsWithRef<"input">, "onChange"> & {
  readonly label: string;
  readonly note?: string;
  readonly onWrite: (value: string) => void;
};

/** A line to write on, with its name above and what to know of it below. */
export function Field({ label, note, onWrite, ...rest }: Props) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        {...rest}
        id={id}
        aria-describedby={note ? `${id}-note` : undefined}
        onChange={(event) => onWrite(event.target.value)}
      />
      {note && (
        <p className="field-note" id={`${id}-note`}>
          {note}
        </p>
      )}
    </div>
  );
}

/** Why something was not done, told at once to those who hear the page as well. */
export function Complaint({ children }: { readonly children: string }) {
  return (
    <p className="complaint" role="alert">
      {children}
    </p>
  );
}
