using System.Text;

namespace ToiletAid.TestKit;

/// <summary>Input that gives a line at a time, and does something before each.</summary>
internal sealed class TypedLines(string[] lines, Action<int> before) : InputStream
{
    private int _next;

    public override int Read(byte[] buffer, int offset, int count)
    {
        if (_next == lines.Length)
        {
            return 0;
        }

        before(_next);
        byte[] bytes = Encoding.UTF8.GetBytes(lines[_next++] + "\n");
        bytes.CopyTo(buffer, offset);
        return bytes.Length;
    }
}
