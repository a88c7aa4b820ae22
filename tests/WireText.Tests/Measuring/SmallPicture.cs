using WireText.Measuring;

namespace WireText.Tests.Measuring;

/// <summary>A right drawing, small enough to measure by hand, and ways to spoil it.</summary>
/// <remarks>
/// A switch over a pot and a jack. By hand, as length / distance between the ends / bends: a 20/20/0, b 27/27/2, c 28/28/1,
/// d 44/34/3, e 55/27/3; e hops over c at 56,26.
/// </remarks>
internal static class SmallPicture
{
    public const string Svg = """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 60">
        <style>text { font-family: sans-serif }</style>
        <rect class="paper" x="0" y="0" width="100" height="60"/>
        <g class="part" id="part-sel" data-part="sel" data-kind="switch">
        <rect class="body" x="20" y="10" width="40" height="8"/>
        <text class="part-name" x="40" y="15" font-size="3" text-anchor="middle" textLength="6">sel</text>
        </g>
        <g class="part" id="part-vol" data-part="vol" data-kind="pot">
        <circle class="body" cx="30" cy="45" r="8"/>
        <circle class="surface" data-lug="vol.case" cx="30" cy="45" r="8"/>
        <text class="part-name" x="30" y="45" font-size="3" text-anchor="middle" textLength="5">vol</text>
        <text class="part-value" x="30" y="48" font-size="2" text-anchor="middle" textLength="5">250k</text>
        </g>
        <g class="part" id="part-out" data-part="out" data-kind="jack">
        <rect class="body" x="70" y="35" width="16" height="16"/>
        <text class="part-name" x="78" y="41" font-size="3" text-anchor="middle" textLength="6">out</text>
        </g>
        <g class="wire" data-wire="a" data-from="sel.1" data-to="vol.case" data-kind="wire"><path class="casing" d="M24 22 L24 42"/><path class="core" d="M24 22 L24 42"/></g>
        <g class="wire" data-wire="b" data-from="sel.2" data-to="vol.2" data-kind="wire"><path class="core" d="M40 22 L40 30 L44 30 L44 45"/></g>
        <g class="wire" data-wire="c" data-from="sel.3" data-to="out.tip" data-kind="wire"><path class="core" d="M56 22 L56 38.2 Q56 40 57.8 40 L66 40"/></g>
        <g class="wire" data-wire="d" data-from="vol.case" data-to="out.sleeve" data-kind="wire"><path class="core" d="M34 50 L34 55 L60 55 L60 48 L66 48"/></g>
        <g class="wire" data-wire="e" data-from="vol.2" data-to="out.tip" data-kind="wire"><path class="gap" d="M55 26 A1 1 0 0 1 57 26"/><path class="core" d="M44 45 L50 45 L50 26 L55 26 A1 1 0 0 1 57 26 L66 26 L66 40"/></g>
        <g class="lug" data-lug="sel.1" data-part="sel"><circle class="eyelet" cx="24" cy="22" r="0.8"/><text class="lug-label" x="21.5" y="22.7" font-size="2" text-anchor="middle" textLength="1">1</text></g>
        <g class="lug" data-lug="sel.2" data-part="sel"><circle class="eyelet" cx="40" cy="22" r="0.8"/></g>
        <g class="lug" data-lug="sel.3" data-part="sel"><circle class="eyelet" cx="56" cy="22" r="0.8"/></g>
        <g class="lug" data-lug="sel.4" data-part="sel"><circle class="eyelet" cx="48" cy="22" r="0.8"/></g>
        <text class="lug-label" data-lug="sel.4" x="46" y="22.7" font-size="2" text-anchor="middle" textLength="1">4</text>
        <g class="lug" data-lug="vol.2" data-part="vol"><circle class="eyelet" cx="44" cy="45" r="0.8"/></g>
        <g class="lug" data-lug="out.tip" data-part="out"><circle class="eyelet" cx="66" cy="40" r="0.8"/></g>
        <g class="lug" data-lug="out.sleeve" data-part="out"><circle class="eyelet" cx="66" cy="48" r="0.8"/></g>
        <circle class="joint" data-lug="vol.case" data-wire="a" cx="24" cy="42" r="0.95"/>
        <circle class="joint" data-lug="vol.case" data-wire="d" cx="34" cy="50" r="0.95"/>
        <g class="tag" data-wire="a"><rect class="tag-box" x="22.65" y="28" width="2.7" height="4"/><text class="tag-text" x="24.7" y="30" transform="rotate(-90 24.7 30)" font-size="2" text-anchor="middle" textLength="3">BK</text></g>
        <g class="tag" data-wire="c"><rect class="tag-box" x="59" y="38.65" width="4" height="2.7"/><text class="tag-text" x="61" y="40.7" font-size="2" text-anchor="middle" textLength="3">RD</text></g>
        <g class="finding" data-finding="1"><circle class="ring" cx="48" cy="22" r="1.7"/><text x="48" y="20.2" font-size="1.6" text-anchor="middle" textLength="1">1</text></g>
        <g class="title-block"><text class="title" x="5" y="58" font-size="3" textLength="20">A right drawing</text></g>
        </svg>
        """;

    public static readonly ExpectedWire[] Source =
    [
        new("a", "sel.1", "vol.case"),
        new("b", "sel.2", "vol.2"),
        new("c", "sel.3", "out.tip"),
        new("d", "vol.case", "out.sleeve"),
        new("e", "vol.2", "out.tip"),
    ];

    /// <summary>Measures the drawing with one place changed.</summary>
    public static PictureMeasure Spoiled(string right, string wrong)
    {
        Assert.Contains(right, Svg, StringComparison.Ordinal);
        return PictureMeasurer.Measure(Svg.Replace(right, wrong, StringComparison.Ordinal), Source);
    }

    /// <summary>Measures the drawing with something more in it.</summary>
    public static PictureMeasure With(string more) => Spoiled("</svg>", more + "</svg>");
}
