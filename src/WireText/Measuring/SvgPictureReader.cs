using System.Text;
using System.Xml;

namespace WireText.Measuring;

/// <summary>Reads a finished drawing: the classes and <c>data-</c> names of its SVG say what each shape is.</summary>
/// <remarks>Hostile text is expected: no DTD, no recursion, and limits on size, depth and numbers.</remarks>
internal sealed class SvgPictureReader
{
    /// <summary>These three are many times what the largest drawing has; a hostile one ends here. Chosen.</summary>
    internal const int MostCharacters = 64_000_000;
    internal const int MostElements = 200_000;
    internal const int MostDepth = 64;

    private readonly Stack<Group> groups = new();
    private readonly List<DrawnBody> bodies = [];
    private readonly Dictionary<string, DrawnLug> lugs = new(StringComparer.Ordinal);
    private readonly List<DrawnSurface> surfaces = [];
    private readonly List<DrawnJoint> joints = [];
    private readonly List<WireGroup> wires = [];
    private readonly List<WireGroup> braids = [];
    private readonly List<DrawnLabel> labels = [];
    private readonly Dictionary<string, Spot> led = new(StringComparer.Ordinal);
    private Frame? page;

    /// <exception cref="UnreadablePictureException">It is not such a drawing.</exception>
    public static DrawnPicture Read(string svg)
    {
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            MaxCharactersInDocument = MostCharacters,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
        };
        try
        {
            using var text = new StringReader(svg);
            using var xml = XmlReader.Create(text, settings);
            var reader = new SvgPictureReader();
            reader.ReadAll(xml);
            return reader.Result();
        }
        catch (XmlException problem)
        {
            throw new UnreadablePictureException($"not an SVG drawing: {problem.Message}", problem);
        }
    }

    private void ReadAll(XmlReader xml)
    {
        var count = 0;
        while (xml.Read())
        {
            if (xml.NodeType == XmlNodeType.Element)
            {
                if (++count > MostElements)
                {
                    throw new UnreadablePictureException($"more than {MostElements} elements");
                }

                Open(xml);
            }
            else if (xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace)
            {
                if (groups.TryPeek(out var group) && group.Element.Name is "text" or "tspan")
                {
                    group.Text.Append(xml.Value);
                }
            }
            else if (xml.NodeType == XmlNodeType.EndElement)
            {
                Close(groups.Pop());
            }
        }
    }

    private void Open(XmlReader xml)
    {
        var element = Element.Read(xml);
        if (groups.Count == 0)
        {
            ReadRoot(element);
        }
        else if (groups.Count > MostDepth)
        {
            throw new UnreadablePictureException($"elements lie more than {MostDepth} deep in one another");
        }
        else if (element.Has("transform") && element.Name != "text")
        {
            throw new UnreadablePictureException($"a {element.Name} has a transform; only texts may");
        }

        var group = Enter(element);
        if (xml.IsEmptyElement)
        {
            Close(group);
        }
        else
        {
            groups.Push(group);
        }
    }

    private void ReadRoot(Element element)
    {
        if (element.Name != "svg")
        {
            throw new UnreadablePictureException($"not an SVG drawing: its root is '{element.Name}'");
        }

        var numbers = element.Required("viewBox").Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        if (numbers.Length != 4)
        {
            throw new UnreadablePictureException("the viewBox must have four numbers");
        }

        var box = Array.ConvertAll(numbers, number => Millimetres.Parse(number));
        page = new Frame(box[0], box[1], box[0] + box[2], box[1] + box[3]);
    }

    /// <summary>Takes the element in; what it says of its children is in the group that comes back.</summary>
    private Group Enter(Element element)
    {
        var parent = groups.TryPeek(out var outer) ? outer : new Group(new Element("", []));
        var group = new Group(element)
        {
            Part = element.Value("data-part") ?? parent.Part,
            On = element.Value("data-on") ?? parent.On,
            Kind = (element.HasClass("part") ? element.Value("data-kind") : null) ?? parent.Kind,
            Lug = element.Value("data-lug") ?? parent.Lug,
            Wire = parent.Wire,
            Tag = parent.Tag,
            Finding = element.Value("data-finding") ?? parent.Finding,
            IsSkipped =
                parent.IsSkipped
                || element.Name is "defs" or "style" or "title" or "desc" or "metadata"
                || element.HasClass("close-up"),
        };
        if (group.IsSkipped)
        {
            return group;
        }

        if (element.Name == "g")
        {
            EnterGroup(element, group);
        }
        else
        {
            TakeShape(element, group);
        }

        return group;
    }

    private void EnterGroup(Element element, Group group)
    {
        if (element.HasClass("wire"))
        {
            wires.Add(group.Wire = new WireGroup(element));
        }
        else if (element.HasClass("braid"))
        {
            braids.Add(group.Wire = new WireGroup(element));
        }
        else if (element.HasClass("tag"))
        {
            group.Tag = new TagGroup(element.Required("data-wire"));
        }
    }

    private void TakeShape(Element element, Group group)
    {
        if (group.Wire is { } wire && element.Name == "path")
        {
            TakePath(element, wire);
        }
        else if (group.Tag is { } tag && element.HasClass("tag-box"))
        {
            tag.Include(BoxOf(element));
        }

        if (element.HasClass("body"))
        {
            bodies.Add(new DrawnBody(PartOf(element, group), ShapeOf(element), group.On, group.Kind ?? ""));
        }

        if (element.HasClass("surface"))
        {
            var name = element.Required("data-lug");
            surfaces.Add(new DrawnSurface(name, PartOf(element, group), ShapeOf(element)));
        }

        if (element.HasClass("eyelet"))
        {
            TakeEyelet(element, group);
        }

        if (element.HasClass("leader"))
        {
            led[group.Tag?.Wire ?? group.Lug ?? ""] = PathReader.Read(element.Required("d")).First;
        }

        if (element.HasClass("joint"))
        {
            joints.Add(new DrawnJoint(group.Lug ?? "", element.Value("data-wire") ?? "", DiscOf(element)));
        }
    }

    private static void TakePath(Element element, WireGroup wire)
    {
        if (element.HasClass("conductor"))
        {
            wire.Conductors.Add(PathReader.Read(element.Required("d")));
        }
        else if (element.HasClass("core"))
        {
            wire.Cores.Add(PathReader.Read(element.Required("d")));
            wire.CoreWidth = element.Value("stroke-width") is { } width ? Millimetres.Parse(width) : 1.0;
        }
        else if (element.HasClass("sheath"))
        {
            wire.Sheaths.Add(PathReader.Read(element.Required("d")));
        }
    }

    private void TakeEyelet(Element element, Group group)
    {
        var name = group.Lug ?? throw new UnreadablePictureException("an eyelet does not say which lug it is");
        if (!lugs.TryAdd(name, new DrawnLug(name, PartOf(element, group), DiscOf(element))))
        {
            throw new UnreadablePictureException($"lug '{name}' is drawn twice");
        }
    }

    private void Close(Group group)
    {
        if (group.IsSkipped)
        {
            return;
        }

        if (group.Element.Name == "text")
        {
            CloseText(group);
        }
        else if (group.Element.Name == "tspan" && groups.TryPeek(out var text))
        {
            text.Text.Append(group.Text);
        }
        else if (group.Element.Name == "g" && group.Tag is { Bounds: { } bounds } tag && group.Element.HasClass("tag"))
        {
            labels.Add(new DrawnLabel(new DrawnThing(ThingKind.Tag, tag.Wire), Part: null, tag.Wire, bounds));
        }
    }

    private void CloseText(Group group)
    {
        var content = group.Text.ToString().Trim();
        if (content.Length == 0)
        {
            return;
        }

        var bounds = TextBounds.Of(group.Element, content);
        if (group.Tag is { } tag)
        {
            tag.Include(bounds);
            return;
        }

        var part = group.Element.Value("data-part") ?? group.Part;
        labels.Add(new DrawnLabel(ThingOf(group, content), part, Wire: null, bounds, content));
    }

    private static DrawnThing ThingOf(Group group, string content)
    {
        if (group.Element.HasClass("part-name"))
        {
            return new DrawnThing(ThingKind.PartName, group.Part ?? "");
        }

        if (group.Element.HasClass("part-value"))
        {
            return new DrawnThing(ThingKind.PartValue, group.Part ?? "");
        }

        if (group.Element.HasClass("lug-label"))
        {
            return new DrawnThing(ThingKind.LugLabel, group.Lug ?? "");
        }

        return group.Finding is { } finding
            ? new DrawnThing(ThingKind.Finding, finding)
            : new DrawnThing(ThingKind.Text, content);
    }

    private DrawnPicture Result()
    {
        var found = page ?? throw new UnreadablePictureException("not an SVG drawing: it is empty");
        return new DrawnPicture(
            found,
            [.. bodies],
            [.. lugs.Values.OrderBy(lug => lug.Name, StringComparer.Ordinal)],
            [.. surfaces],
            [.. joints],
            [.. wires.Select(wire => wire.ToWire())],
            [
                .. braids
                    .Select(braid => braid.ToBraid())
                    .GroupBy(braid => braid.Id, StringComparer.Ordinal)
                    .Select(Joined),
            ],
            [.. labels.Select(WithPart)]
        )
        {
            Led = led,
        };
    }

    /// <summary>A braid's sheath and its tails may stand in groups of their own.</summary>
    private static DrawnBraid Joined(IEnumerable<DrawnBraid> pieces) =>
        pieces.Aggregate(
            (one, two) =>
                one with
                {
                    Sheaths = one.Sheaths.AddRange(two.Sheaths),
                    Tails = one.Tails.AddRange(two.Tails),
                }
        );

    /// <summary>A lug's label belongs to the lug's part, wherever in the file it stands.</summary>
    private DrawnLabel WithPart(DrawnLabel label) =>
        label.Part is null && label.Thing.Kind == ThingKind.LugLabel && lugs.TryGetValue(label.Thing.Id, out var lug)
            ? label with
            {
                Part = lug.Part,
            }
            : label;

    private static string PartOf(Element element, Group group) =>
        element.Value("data-part")
        ?? group.Part
        ?? throw new UnreadablePictureException($"a {element.Value("class")} does not say which part it is of");

    private static Shape ShapeOf(Element element) =>
        element.Name switch
        {
            "rect" => new Shape.Rectangle(BoxOf(element)),
            "circle" => DiscOf(element),
            _ => throw new UnreadablePictureException(
                $"a body or surface is a {element.Name}; it must be a rect or circle"
            ),
        };

    private static Frame BoxOf(Element element)
    {
        var (x, y) = (element.Number("x"), element.Number("y"));
        return new Frame(x, y, x + element.Size("width"), y + element.Size("height"));
    }

    private static Shape.Disc DiscOf(Element element) =>
        new(new Spot(element.Number("cx"), element.Number("cy")), element.Size("r"));

    private sealed class Group(Element element)
    {
        public Element Element { get; } = element;

        public string? Part { get; init; }

        public string? On { get; init; }

        public string? Kind { get; init; }

        public string? Lug { get; init; }

        public WireGroup? Wire { get; set; }

        public TagGroup? Tag { get; set; }

        public string? Finding { get; init; }

        public bool IsSkipped { get; init; }

        public StringBuilder Text { get; } = new();
    }

    private sealed class WireGroup(Element element)
    {
        public List<DrawnPath> Cores { get; } = [];

        /// <summary>From joint to joint, where the insulation ends before.</summary>
        public List<DrawnPath> Conductors { get; } = [];

        public List<DrawnPath> Sheaths { get; } = [];

        public double CoreWidth { get; set; } = 1.0;

        public DrawnWire ToWire() =>
            Cores.Count <= 1 && Conductors.Count <= 1
                ? new DrawnWire(
                    Id,
                    From,
                    To,
                    element.Value("data-kind") ?? "wire",
                    CoreWidth,
                    Conductors.Concat(Cores).FirstOrDefault(),
                    element.Value("data-colour") ?? ""
                )
                : throw new UnreadablePictureException($"wire '{Id}' has more than one core path");

        public DrawnBraid ToBraid() => new(Id, From, To, [.. Sheaths], [.. Cores]);

        private string Id => element.Required("data-wire");

        private string From => element.Value("data-from") ?? "";

        private string To => element.Value("data-to") ?? "";
    }

    private sealed class TagGroup(string wire)
    {
        public string Wire { get; } = wire;

        public Frame? Bounds { get; private set; }

        public void Include(Frame frame) => Bounds = Bounds?.With(frame) ?? frame;
    }
}
