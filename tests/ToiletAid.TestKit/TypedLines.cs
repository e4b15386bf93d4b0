using System.Text;

namespace ToiletAid.TestKit;

/// <summary>Input that gives a line at a time, and does something before each.</summary>
internal sealed class TypedLines(string[] lines, Action<int> before) : Stream
{
    private int _next;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

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

    public override void Flush() => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
