using System.Buffers;

namespace WireText.Drawing.Layout.Routing;

/// <summary>
/// Large arrays that one routing after the other uses. A routing takes megabytes for a moment, and memory that is new to
/// the process costs more than the routing does.
/// </summary>
internal static class SharedMemory
{
    /// <summary>An array of at least so many elements; the first so many are at their default, what follows is anything.</summary>
    public static T[] TakeCleared<T>(int length)
        where T : struct
    {
        var array = ArrayPool<T>.Shared.Rent(length);
        array.AsSpan(0, length).Clear();
        return array;
    }

    public static void GiveBack<T>(T[] array)
        where T : struct => ArrayPool<T>.Shared.Return(array);
}
