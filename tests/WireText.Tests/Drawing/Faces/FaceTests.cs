using WireText.Circuits.Binding;
using WireText.Drawing.Faces;
using WireText.Geometry;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Tests.Parts;
using WireText.Text;

namespace WireText.Tests.Drawing.Faces;

public class FaceTests
{
    [Fact]
    public void Face_OfAPot_HasItsLugsPointingDownAndItsCaseAsASurface()
    {
        var face = FaceOf("pot vol 250k audio", "vol");

        Assert.Equal(["1", "2", "3"], face.Lugs.Select(lug => lug.Label));
        Every.Item(face.Lugs, lug => Assert.Equal(Side.South, lug.Outward));
        Assert.Contains(Side.East, face.Lugs[0].Exits);
        Assert.Equal(Side.South, Assert.Single(face.Lugs[1].Exits));
        Assert.Equal("vol.case", Assert.Single(face.Layout.Surfaces).Id);
        Assert.Equal(["vol", "250k audio"], face.Inside.Select(line => line.Text));
    }

    [Fact]
    public void Face_OfALever_HasEachRowLeavingByItsOwnEdge()
    {
        var face = FaceOf("switch sel lever-3way", "sel");

        Every.Item(face.Lugs, lug => Assert.Equal(lug.Label[0] == 'A' ? Side.North : Side.South, lug.Outward));
    }

    [Fact]
    public void Face_OfAPushPull_LetsNoInnerLugOutPastTheLugsOfThePot()
    {
        var face = FaceOf("pot vol push-pull 250k audio", "vol");

        var sides = face
            .Lugs.Where(lug => lug.Look == LugLook.Riveted)
            .ToDictionary(lug => lug.Label, lug => lug.Outward);
        Assert.Equal(Side.West, sides["A0"]);
        Assert.Equal(Side.West, sides["A2"]);
        Assert.Equal(Side.East, sides["B0"]);
        Assert.Equal(Side.East, sides["B2"]);
        Assert.DoesNotContain(Side.South, sides.Values);
    }

    [Fact]
    public void Face_OfACapacitor_HasItsValueAndItsMarkOnIt()
    {
        var face = FaceOf("cap dark 47n", "dark");

        Assert.Equal(["47n", "473"], face.Inside.Select(line => line.Text));
        Assert.Equal(["dark"], face.Outside.Select(line => line.Text));
        Assert.Equal([Side.West, Side.East], face.Lugs.Select(lug => lug.Outward));
    }

    [Fact]
    public void Face_OfAUsersPartWithoutPlaces_HasRoomForEachJoint()
    {
        var face = FaceOf(
            """
            define gizmo mystery
                lugs a b c d e f g
                resistor a b 10k
                spare a b c d e f g
            gizmo box mystery
            """,
            "box"
        );

        var places = face.Lugs.Select(lug => lug.At).ToList();
        Assert.Equal(7, places.Count);
        for (var i = 0; i < places.Count; i++)
        {
            for (var j = i + 1; j < places.Count; j++)
            {
                Assert.True(Math.Abs(places[i].X - places[j].X) >= 4 || Math.Abs(places[i].Y - places[j].Y) >= 4);
            }
        }
    }

    [Theory, MemberData(nameof(DeclaredParts.Rows), MemberType = typeof(DeclaredParts))]
    public void Face_OfAStandardPart_KeepsItsWordsInsideAndOffItsLugs(string kind, string model)
    {
        var face = FaceOfA(kind, model);

        // Bare metal has no lugs: it is soldered to anywhere.
        Assert.Equal(kind == "metal", face.Lugs.IsEmpty);
        Assert.DoesNotContain(face.Lugs, lug => lug.Exits.IsEmpty);
        if (face.Layout.TextBox is { } text)
        {
            Assert.True(Holds(face.Layout.Body[0], text));
            Assert.DoesNotContain(face.Lugs, lug => IsIn(text, lug.At));
        }

        Assert.Equal(face.Layout.OutsideLabel is null, face.Outside.IsEmpty);
        Assert.Equal(face.Layout.TextBox is null, face.Inside.IsEmpty);
        Assert.Contains("it", face.Inside.Concat(face.Outside).Select(line => line.Text));
    }

    [Fact]
    public void Problem_OfACircuit_RanksWiresByTheirNet()
    {
        var problem = FaceBuilder.BuildProblem(
            Drawings.CircuitOf(
                """
                pickup neck single-coil-cover dcr=6k l=2H c=100p
                pot vol 250k audio
                jack out mono
                wire neck.hot to vol.3 white
                wire neck.ground to vol.case black
                wire neck.cover to vol.case bare
                wire vol.2 to out.tip red
                wire vol.1 to vol.case bare
                wire vol.case to out.sleeve black
                """
            )
        );

        string[] expected =
        [
            "neck.hot Signal",
            "neck.ground Ground",
            "neck.cover Screen",
            "vol.2 Signal",
            "vol.1 Ground",
            "vol.case Ground",
        ];
        Assert.Equal(expected, problem.Wires.Select(wire => $"{wire.From} {wire.Rank}"));
        Assert.Equal([false, false, true, false, true, false], problem.Wires.Select(wire => wire.Tag is null));
    }

    private static Face FaceOf(string text, string part)
    {
        var circuit = Drawings.CircuitOf(text);
        return FaceBuilder.BuildFaces(circuit)[circuit.FindPart(part)!.Index];
    }

    /// <summary>Declared so that nothing is wrong with the line.</summary>
    private static Face FaceOfA(string kind, string model)
    {
        var text = new SourceText("part.wiring", DeclaredParts.Line(kind, model));
        var bound = Binder.Bind(WiringParser.Parse(text), NoSources.Instance);
        Assert.Empty(bound.Findings);
        return Assert.Single(FaceBuilder.BuildFaces(bound.Circuit!));
    }

    private static bool IsIn(Box box, Point at) =>
        at.X > box.X && at.X < box.Right && at.Y > box.Y && at.Y < box.Bottom;

    private static bool Holds(Outline outline, Box box)
    {
        Point[] corners =
        [
            new(box.X, box.Y),
            new(box.Right, box.Y),
            new(box.X, box.Bottom),
            new(box.Right, box.Bottom),
        ];
        return outline switch
        {
            Outline.Circle circle => corners.All(c =>
                Math.Sqrt(Math.Pow(c.X - circle.Centre.X, 2) + Math.Pow(c.Y - circle.Centre.Y, 2)) < circle.Radius
            ),
            Outline.Rectangle rectangle => corners.All(c => IsIn(rectangle.Box, c)),
            _ => false,
        };
    }

    /// <summary>A wire to a lug at the rim must not have to come over the part itself.</summary>
    [Theory, MemberData(nameof(DeclaredParts.Rows), MemberType = typeof(DeclaredParts))]
    public void Face_OfAStandardPart_LetsNoOuterLugOutThroughTheBody(string kind, string model)
    {
        var face = FaceOfA(kind, model);
        foreach (var lug in face.Lugs.Where(lug => !IsInside(face.Layout.Body[0], lug.At)))
        {
            foreach (var exit in lug.Exits)
            {
                var step = exit switch
                {
                    Side.North => new Point(0, -0.5),
                    Side.East => new Point(0.5, 0),
                    Side.South => new Point(0, 0.5),
                    _ => new Point(-0.5, 0),
                };
                for (var (at, n) = (lug.At, 0); n < 400; (at, n) = (at + step, n + 1))
                {
                    Assert.False(IsInside(face.Layout.Body[0], at), $"{lug.Label} {exit}");
                }
            }
        }

        static bool IsInside(Outline outline, Point at) =>
            outline switch
            {
                Outline.Circle circle => Math.Pow(at.X - circle.Centre.X, 2) + Math.Pow(at.Y - circle.Centre.Y, 2)
                    < circle.Radius * circle.Radius,
                Outline.Rectangle { Box: var box } => at.X > box.X
                    && at.X < box.Right
                    && at.Y > box.Y
                    && at.Y < box.Bottom,
                _ => false,
            };
    }
}
