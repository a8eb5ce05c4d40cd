"""What a page says in another voice - passive, second person, few words - put into the orders the grammar knows."""
