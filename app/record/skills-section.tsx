import { UNIT_WORDS } from "@/app/_parts/course/course-words";
import { sayBeside } from "@/app/_parts/kept-work/say-beside";
import { nameInside } from "@/lib/progress/skill-of";
import type { SkillSummary, Summary } from "@/lib/progress/summarise";
import { MASTERED_AT } from "@/lib/progress/trace-skill";
import { DataTable } from "./data-table";
import { sayDay, sayKnown, sayPercent } from "./record-words";
import { Section } from "./section";

/** Every skill begun: how surely it is known, as a bar, and what the marks say. */
export function SkillsSection({ summary }: { readonly summary: Summary }) {
  const { mastered, shaky, notBegun } = summary;
  const begun = [...shaky, ...mastered];
  return (
    <Section
      id="skills"
      title="Skills"
      notes={
        <>
          <p>{summary.words}</p>
          <p className="record-key">
            A bar is how surely your marks show that you know the skill. From {sayPercent(MASTERED_AT)} on it is
            mastered, and the bar is solid; until then it is hatched. A mastered skill comes back now and then, each
            time after a longer while.
          </p>
          {notBegun.length > 0 && <p className="record-key">Not begun: {notBegun.map(nameInside).join(", ")}.</p>}
        </>
      }
    >
      {begun.length === 0 && <p>No mark of yours speaks for a skill of the course yet.</p>}
      <ul className="skill-bars">
        {begun.length > 0 && <BarScale />}
        {begun.map((skill) => (
          <SkillBar key={skill.id} skill={skill} />
        ))}
      </ul>
      {begun.length > 0 && (
        <DataTable
          caption="These skills as a table"
          columns={["Skill", "Unit", "State", "Surely known", "Marks", "Right", "Mastered on", "Comes back"]}
          rows={[...begun, ...notBegun].map(rowOf)}
        />
      )}
    </Section>
  );
}

/** The scale of the bars: from not known at all to surely known. */
function BarScale() {
  return (
    <li className="skill-bar bar-scale" aria-hidden="true">
      <svg className="bar" aria-hidden="true" focusable="false">
        {[0, 0.5, MASTERED_AT].map((share) => (
          <g key={share}>
            <line className="bar-tick" x1={`${100 * share}%`} x2={`${100 * share}%`} y1="70%" y2="100%" />
            <text x={`${100 * share}%`} y="55%" textAnchor={share === 0 ? "start" : "middle"}>
              {sayPercent(share)}
            </text>
          </g>
        ))}
      </svg>
    </li>
  );
}

function SkillBar({ skill }: { readonly skill: SkillSummary }) {
  const { id, name, meaning, probability, masteredOn, words } = skill;
  const hatch = `hatch-${id}`;
  return (
    <li className="skill-bar">
      <span className="skill-name">
        <strong>{name}</strong>
        <span>{meaning}</span>
      </span>
      <svg className="bar" aria-hidden="true" focusable="false">
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path className="bar-hatch" d="M0 0V6" />
        </pattern>
        <rect
          className="bar-fill"
          width={`${100 * probability}%`}
          y="25%"
          height="50%"
          fill={masteredOn === null ? `url(#${hatch})` : "var(--graphite)"}
        />
        <rect className="bar-frame" width="100%" y="25%" height="50%" />
        <line className="bar-line" x1={`${100 * MASTERED_AT}%`} x2={`${100 * MASTERED_AT}%`} y1="5%" y2="95%" />
      </svg>
      <span className="skill-share">{sayKnown(probability)}</span>
      <span className="skill-words">{sayBeside(words, name)}</span>
    </li>
  );
}

function rowOf({ name, unit, probability, marks, right, masteredOn, dueInDays }: SkillSummary): readonly string[] {
  if (marks === 0) return [name, UNIT_WORDS[unit].title, "not begun", "none", "0", "0", "not yet", "not yet"];
  return [
    name,
    UNIT_WORDS[unit].title,
    masteredOn === null ? "shaky" : "mastered",
    sayKnown(probability),
    String(marks),
    String(right),
    masteredOn === null ? "not yet" : sayDay(masteredOn),
    dueInDays === null ? "not yet" : dueInDays === 0 ? "now" : `in ${dueInDays} day${dueInDays === 1 ? "" : "s"}`,
  ];
}
