using System.Collections.Immutable;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Mods;

/// <summary>Does to the statements of a base what a mod says: lifts, drops and replaces, then adds what is new.</summary>
internal sealed class BaseChanges(BaseWiring under, FindingSink sink)
{
    private readonly List<StatementSyntax> statements = [.. under.Resolved.Statements];

    /// <summary>The base's statements that are left, then the mod's own.</summary>
    public ImmutableArray<StatementSyntax> Apply(ImmutableArray<StatementSyntax> mod)
    {
        // What is expected goes first: a dropped part may be spoken of there.
        foreach (var change in mod.Where(one => !one.IsBroken).OrderBy(OrderOf))
        {
            Take(change);
        }

        foreach (var statement in mod)
        {
            TakeTheOlderOut(statement);
        }

        return [.. statements, .. mod.Where(statement => !ModResolver.IsChange(statement))];
    }

    /// <summary>Does one change; false where what it takes out is not there, which is told then.</summary>
    public bool Take(StatementSyntax change)
    {
        var told = sink.Count;
        switch (change)
        {
            case DropExpectSyntax drop:
                Drop(drop);
                break;
            case ReplaceSyntax replace:
                Replace(replace);
                break;
            case LiftSyntax lift:
                Lift(lift);
                break;
            case DropSyntax drop:
                Drop(drop);
                break;
        }

        return sink.Count == told;
    }

    private static int OrderOf(StatementSyntax change) =>
        change switch
        {
            DropExpectSyntax => 0,
            ReplaceSyntax => 1,
            LiftSyntax => 2,
            _ => 3,
        };

    private void Replace(ReplaceSyntax replace)
    {
        var at = statements.FindIndex(one => one is PartSyntax part && Naming.Alike(part.Name.Text, replace.Name.Text));
        if (at < 0)
        {
            ReportNoPart(replace.Name);
            return;
        }

        statements[at] = (PartSyntax)statements[at] with
        {
            Name = replace.Name,
            Arguments = replace.Arguments,
            Location = replace.Location,
        };
    }

    private void Lift(LiftSyntax lift)
    {
        var lifting = new Lifting(lift.Lug.FullName, lift.To?.FullName);
        var isThere = false;
        for (var i = statements.Count - 1; i >= 0; i--)
        {
            if (lifting.LeftOf(statements[i]) is not { } left)
            {
                continue;
            }

            isThere = true;
            statements.RemoveAt(i);
            statements.InsertRange(i, left);
        }

        if (!isThere)
        {
            ReportNothingOn(lift);
        }
    }

    private void Drop(DropSyntax drop)
    {
        var name = drop.Name.Text;
        if (!statements.Exists(one => NameOf(one) is { } other && Naming.Alike(other.Text, name)))
        {
            ReportNoPart(drop.Name);
            return;
        }

        foreach (var expect in statements.OfType<ExpectSyntax>().Where(one => Mentions.Part(one, name)).ToList())
        {
            statements.Remove(expect);
            sink.Add(
                ModFindings
                    .StillExpected.At(
                        drop.Location,
                        $"the base still expects something of '{name}'",
                        $"write: drop expect {ExpectedAt.Words(expect.Jack, expect.State)}"
                    )
                    .Beside(expect.Location, "expected here")
            );
        }

        for (var i = statements.Count - 1; i >= 0; i--)
        {
            if (Dropping.LeftOf(statements[i], name) is { } left)
            {
                statements.RemoveAt(i);
                statements.InsertRange(i, left);
            }
        }
    }

    private void Drop(DropExpectSyntax drop)
    {
        if (statements.RemoveAll(one => one is ExpectSyntax expect && ExpectedAt.IsMeant(expect, drop)) == 0)
        {
            var there = statements
                .OfType<ExpectSyntax>()
                .Select(one => ExpectedAt.Words(one.Jack, one.State))
                .Distinct(StringComparer.OrdinalIgnoreCase)
                .ToList();
            sink.Add(
                ModFindings.NotOnBase.At(
                    drop.Location,
                    $"the base expects nothing at {ExpectedAt.Words(drop.Jack, drop.State)}",
                    there.Count == 0 ? "take the line out" : $"it expects something at: {string.Join(", ", there)}"
                )
            );
        }
    }

    /// <summary>What can be said once alone is the mod's where it says it.</summary>
    private void TakeTheOlderOut(StatementSyntax newer)
    {
        if (newer.IsBroken)
        {
            return;
        }

        statements.RemoveAll(older => IsTheSame(older, newer));
        for (var i = 0; i < statements.Count; i++)
        {
            statements[i] = (statements[i], newer) switch
            {
                (RestSyntax older, RestSyntax rest) => older with { Pairs = Without(older.Pairs, rest.Pairs) },
                (LoadSyntax older, LoadSyntax load) => older with { Pairs = Without(older.Pairs, load.Pairs) },
                var (other, _) => other,
            };
        }

        statements.RemoveAll(older =>
            older is RestSyntax { Pairs.IsEmpty: true } or LoadSyntax { Pairs.IsEmpty: true }
        );
    }

    private static bool IsTheSame(StatementSyntax older, StatementSyntax newer) =>
        (older, newer) switch
        {
            (CircuitSyntax, CircuitSyntax) or (FinishSyntax, FinishSyntax) or (ArrangeSyntax, ArrangeSyntax) => true,
            (AboutSyntax one, AboutSyntax other) => Naming.Alike(one.Key.Text, other.Key.Text),
            (PositionsSyntax one, PositionsSyntax other) => Naming.Alike(one.Control.FullName, other.Control.FullName),
            (PlaceSyntax one, PlaceSyntax other) => Naming.Alike(one.Name.Text, other.Name.Text),
            _ => false,
        };

    private static ImmutableArray<PairSyntax> Without(
        ImmutableArray<PairSyntax> older,
        ImmutableArray<PairSyntax> newer
    ) => older.RemoveAll(pair => newer.Any(other => Naming.Alike(pair.Key.Text, other.Key.Text)));

    private static WordSyntax? NameOf(StatementSyntax statement) =>
        statement switch
        {
            PartSyntax part => part.Name,
            SpliceSyntax splice => splice.Name,
            _ => null,
        };

    private void ReportNoPart(WordSyntax name)
    {
        var names = statements.Select(NameOf).OfType<WordSyntax>().Select(word => word.Text).ToList();
        var near = DidYouMean.Nearest(name.Text, names);
        sink.Add(
            ModFindings
                .NotOnBase.At(
                    name.Location,
                    $"the base has no part '{name.Text}'",
                    near is null ? $"write one of: {string.Join(", ", names)}" : $"did you mean '{near}'?"
                )
                .MendedBy(TextEdit.Meant(name.Location, near, names))
        );
    }

    private void ReportNothingOn(LiftSyntax lift)
    {
        var onLug = statements
            .Where(one => new Lifting(lift.Lug.FullName, null).LeftOf(one) is not null)
            .Select(one =>
                LineScan.Of(one.Location.Source, one.Location.Position.Line).Content is var line
                    ? $"line {one.Location.Position.Line}: {one.Location.Source.Slice(line)}"
                    : ""
            )
            .Distinct(StringComparer.Ordinal)
            .ToList();
        if (
            onLug.Count == 0
            && !statements.Exists(one => NameOf(one) is { } name && Naming.Alike(name.Text, lift.Lug.Name.Text))
        )
        {
            ReportNoPart(lift.Lug.Name);
            return;
        }

        sink.Add(
            ModFindings.NotOnBase.At(
                lift.Location,
                lift.To is { } to
                    ? $"nothing leads from '{lift.Lug.FullName}' to '{to.FullName}' in the base"
                    : $"nothing is soldered to '{lift.Lug.FullName}' in the base",
                onLug.Count == 0
                    ? $"nothing at all is on '{lift.Lug.FullName}' there: take the line out"
                    : $"on '{lift.Lug.FullName}' there is: {string.Join("; ", onLug)}"
            )
        );
    }
}
