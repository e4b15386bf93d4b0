namespace ToiletAid.TestKit;

/// <summary>A line of any length that takes no memory.</summary>
internal sealed class LongLine(long length) : InputStream
{
    private long _left = length;

    public override int Read(byte[] buffer, int offset, int count)
    {
        int read = (int)Math.Min(count, _left);
        buffer.AsSpan(offset, read).Fill((byte)'1');
        _left -= read;
        return read;
    }
}
