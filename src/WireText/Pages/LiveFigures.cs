using System.Text;
using WireText.Drawing.Shapes;

namespace WireText.Pages;

/// <summary>Writes what the states of a circuit do, which takes longer than its picture, as one line of JSON. <c>docs/watch.md</c> describes it.</summary>
internal static class LiveFigures
{
    public static string Write(PageContents contents) =>
        LiveJson.Write(json =>
        {
            json.WriteNull("why");
            json.WritePropertyName("data");
            json.WriteRawValue(PageData.Write(contents.Table));
            LiveJson.WriteDrawing(json, ThemedSvg.Of(contents.Light, contents.Dark));
            json.WriteStartArray("bars");
            foreach (var bar in contents.Table.Bars)
            {
                json.WriteNumberValue(bar.From);
                json.WriteNumberValue(bar.To);
            }

            json.WriteEndArray();
            var below = new StringBuilder();
            PageSections.Append(below, contents);
            json.WriteString("below", below.ToString());
            json.WriteString("foot", contents.Foot);
        });

    /// <summary>The drawing alone, as it stands among the figures.</summary>
    public static string WriteDrawing(Picture light, Picture dark) =>
        LiveJson.Write(json => LiveJson.WriteDrawing(json, ThemedSvg.Of(light, dark)));

    /// <param name="why">Why there are none.</param>
    public static string WriteNone(string why) => LiveJson.Write(json => json.WriteString("why", why));
}
