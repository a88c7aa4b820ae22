// The editor: the text with its words coloured, what is found marked in it, and the words that may follow.
import { acceptCompletion, autocompletion, completionKeymap } from "@codemirror/autocomplete";
import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { lintKeymap, setDiagnostics } from "@codemirror/lint";
import { EditorState, RangeSetBuilder, StateEffect, StateField } from "@codemirror/state";
import { Decoration, drawSelection, EditorView, highlightActiveLine, hoverTooltip, keymap, lineNumbers } from "@codemirror/view";

/** The kinds of words in the order in which the core counts them. */
const kinds = ["keyword", "kind", "model", "part", "lug", "choice", "key", "number", "quoted", "comment", "colour", "check"];
const marks = kinds.map((kind) => Decoration.mark({ class: `word-${kind}` }));

const setWords = StateEffect.define();
const words = StateField.define({
  create: () => Decoration.none,
  update(now, change) {
    const set = change.effects.find((effect) => effect.is(setWords));
    return set ? set.value : now.map(change.changes);
  },
  provide: (field) => EditorView.decorations.from(field),
});

const look = EditorView.theme({
  "&": { color: "var(--ink)", backgroundColor: "var(--paper)", height: "100%" },
  "&.cm-focused": { outline: "none" },
  ".cm-scroller": { fontFamily: 'ui-monospace, "Noto Sans Mono", "Liberation Mono", monospace', fontSize: ".875rem", lineHeight: "1.55" },
  ".cm-content": { caretColor: "var(--ink)", padding: ".6rem 0" },
  ".cm-cursor": { borderLeftColor: "var(--ink)" },
  ".cm-gutters": { backgroundColor: "var(--paper)", color: "var(--quiet)", border: "none" },
  ".cm-activeLine, .cm-activeLineGutter": { backgroundColor: "color-mix(in srgb, var(--panel) 55%, transparent)" },
  ".cm-selectionBackground, &.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground": {
    backgroundColor: "color-mix(in srgb, var(--now) 22%, transparent)",
  },
  ".word-keyword, .word-kind": { fontWeight: "600" },
  ".word-lug, .word-choice": { color: "var(--now)" },
  ".word-number": { color: "color-mix(in srgb, var(--was) 75%, var(--ink))" },
  ".word-comment, .word-quoted": { color: "var(--quiet)" },
  ".word-comment": { fontStyle: "italic" },
  ".cm-lintRange": { backgroundImage: "none", textDecoration: "underline wavy 1.5px", textUnderlineOffset: ".25em" },
  ".cm-lintRange-error": { backgroundImage: "none", textDecorationColor: "var(--error)" },
  ".cm-lintRange-warning": { backgroundImage: "none", textDecorationColor: "var(--warning)" },
  ".cm-lintRange-info": { backgroundImage: "none", textDecorationColor: "var(--quiet)" },
  ".cm-lintRange-active": { backgroundColor: "var(--panel)" },
  ".cm-lintPoint:after": { display: "none" },
  ".cm-tooltip, .cm-panels": { backgroundColor: "var(--paper)", color: "var(--ink)", border: "1px solid var(--line)", borderRadius: ".35rem", maxWidth: "min(34rem, 92vw)" },
  ".cm-tooltip.cm-tooltip-autocomplete > ul": { fontFamily: "inherit", maxHeight: "14rem" },
  ".cm-tooltip.cm-tooltip-autocomplete > ul > li": { padding: ".2rem .6rem" },
  ".cm-tooltip-autocomplete ul li[aria-selected]": { backgroundColor: "var(--ink)", color: "var(--paper)" },
  ".cm-completionDetail": { fontStyle: "normal", opacity: "1", marginLeft: "1rem" },
  ".cm-completionMatchedText": { textDecoration: "none", fontWeight: "600" },
  ".cm-diagnostic": { padding: ".4rem .7rem", borderLeftColor: "var(--error)" },
  ".cm-diagnostic-warning": { borderLeftColor: "var(--warning)" },
  ".cm-diagnostic-info": { borderLeftColor: "var(--quiet)" },
  ".cm-diagnosticAction": { backgroundColor: "var(--ink)", color: "var(--paper)", padding: ".25rem .6rem", borderRadius: ".3rem", font: "inherit", margin: ".3rem .3rem 0 0", display: "block" },
  ".cm-said": { margin: "0", padding: ".5rem .7rem", maxHeight: "20rem", overflow: "auto", font: "inherit", fontFamily: "ui-monospace, monospace", fontSize: ".8rem", whiteSpace: "pre-wrap" },
});

/**
 * Makes an editor below a place, in a tree of its own so that its style sheets need no exception of the page's policy.
 * `ask` has `complete(text, offset)` and `explain(text, offset)`; `changed(text)` is called for each change by hand or by the page.
 */
export function createEditor(place, text, ask, changed) {
  const root = place.attachShadow({ mode: "open" });
  const view = new EditorView({
    root,
    parent: root,
    state: EditorState.create({
      doc: text,
      extensions: [
        lineNumbers(),
        history(),
        drawSelection(),
        highlightActiveLine(),
        EditorState.tabSize.of(4),
        words,
        look,
        autocompletion({ override: [complete], icons: false }),
        hoverTooltip(explain),
        keymap.of([{ key: "Tab", run: acceptCompletion }, ...completionKeymap, ...lintKeymap, ...historyKeymap, ...defaultKeymap]),
        EditorView.contentAttributes.of({ "aria-label": "Wiring text", autocapitalize: "off", spellcheck: "false", tabindex: "0" }),
        EditorView.updateListener.of((update) => update.docChanged && changed(update.state.doc.toString())),
      ],
    }),
  });

  async function complete(context) {
    const begun = context.matchBefore(/[^\s#"]+/);
    if (!begun && !context.explicit) {
      return null;
    }
    const offered = await ask.complete(context.state.doc.toString(), context.pos);
    const isWhole = offered.some((one) => one.word === context.state.sliceDoc(one.from, context.pos));
    if (offered.length === 0 || context.aborted || (isWhole && !context.explicit)) {
      // After a whole word Enter is a new line.
      return null;
    }
    return { from: offered[0].from, options: offered.map((one) => ({ label: one.word, detail: one.detail })) };
  }

  async function explain(_, at) {
    const said = await ask.explain(view.state.doc.toString(), at);
    if (said === "") {
      return null;
    }
    const shown = document.createElement("pre");
    shown.className = "cm-said";
    shown.textContent = said.replaceAll(/^`{3,}\w*\n?/gm, "").trim();
    return { pos: at, create: () => ({ dom: shown }) };
  }

  const within = (offset) => Math.max(0, Math.min(offset, view.state.doc.length));

  return {
    text: () => view.state.doc.toString(),
    focus: () => view.focus(),

    /** Another text in place of this one; it can be undone. */
    replace(now) {
      view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: now }, selection: { anchor: Math.min(now.length, view.state.selection.main.head) } });
    },

    /** Makes edits, all of them of the text as it stands, at once. */
    edit(edits) {
      view.dispatch({ changes: edits.map(({ from, to, text: insert }) => ({ from, to, insert })), scrollIntoView: true });
    },

    /** Colours words: for each where it starts, where it ends, and its kind. */
    colour(tokens) {
      const built = new RangeSetBuilder();
      for (let i = 0; i < tokens.length; i += 3) {
        if (tokens[i + 1] > tokens[i]) {
          built.add(within(tokens[i]), within(tokens[i + 1]), marks[tokens[i + 2]]);
        }
      }
      view.dispatch({ effects: setWords.of(built.finish()) });
    },

    /** Marks what is found, each with the buttons that mend it. */
    mark(findings, mend) {
      const doc = view.state.doc;
      const severities = { error: "error", warning: "warning" };
      const shown = findings
        .filter((finding) => finding.line <= doc.lines)
        .map((finding) => {
          const from = Math.min(doc.line(finding.line).from + finding.column - 1, doc.length);
          return {
            from,
            to: Math.min(from + Math.max(finding.length, 0), doc.length),
            severity: severities[finding.severity] ?? "info",
            message: finding.help ? `${finding.message}\n${finding.help}` : finding.message,
            actions: finding.mends.map((one) => ({ name: one.title, apply: () => mend(one) })),
          };
        });
      view.dispatch(setDiagnostics(view.state, shown));
    },

    /** Goes to a line, by its number from 1. */
    goTo(line) {
      if (line <= view.state.doc.lines) {
        view.dispatch({ selection: { anchor: view.state.doc.line(line).from }, effects: EditorView.scrollIntoView(view.state.doc.line(line).from, { y: "center" }) });
      }
    },
  };
}
