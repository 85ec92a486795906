package greyspell.handover;

import java.util.List;

/**
 * All that is handed over, in order.
 *
 * @param title of the window and the file
 * @param home whose it is, for the foot of each sheet
 * @param client page one
 * @param technical all that follows
 */
record Pages(String title, String home, List<Block> client, List<Block> technical) {
  Pages {
    client = List.copyOf(client);
    technical = List.copyOf(technical);
  }
}
